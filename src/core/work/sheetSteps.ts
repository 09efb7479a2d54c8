import { bendVee } from '../press/bendVee.js';
import { bendsAlongRolling } from '../row/bendsAlongRolling.js';
import type { PartPlace } from '../row/job/rowJob.js';
import { setting } from '../shop/setting.js';
import type { Notching, Operation } from './operations.js';
import type { OperatorStep, StepNote } from './operatorStep.js';
import { piecesNote } from './piecesNote.js';
import type { StepContext } from './stepContext.js';
import { strokeSteps } from './strokeSteps.js';

/** Notching: lock out, stroke, mark out, first piece, run. */
export function notchSteps(notching: Notching<'notch'>, context: StepContext): OperatorStep[] {
  const { notches } = context.row;
  if (!notches) return [];
  const { widthMm, depthMm, at } = notches;
  const size: StepNote = { is: 'notch size', widthMm, depthMm, bites: notching.strokesEach };
  return onNotcher(notching, [size, cutAt(at, context), { is: 'drill the corner first' }], context);
}

/** Clipping corners off in the notcher. */
export function clipSteps(clipping: Notching<'clip'>, context: StepContext): OperatorStep[] {
  const { clips } = context.row;
  if (!clips) return [];
  const { alongMm, acrossMm, count, at } = clips;
  const place: StepNote = { ...cutAt(at, context), allCorners: count === 4 };
  return onNotcher(clipping, [{ is: 'clip size', alongMm, acrossMm }, place], context);
}

function cutAt(places: readonly PartPlace[] | undefined, { row }: StepContext) {
  const isAngle = row.section.kind === 'angle';
  return { is: 'cut at', isAngle, ...(places ? { places } : {}) } as const;
}

function onNotcher(
  { places, strokesEach, thicknessMm }: Notching<'notch' | 'clip'>,
  size: StepNote[],
  context: StepContext,
): OperatorStep[] {
  const station = 'notcher';
  return [
    { action: 'lock out', station, notes: [] },
    ...strokeSteps({ operation: 'notch', thicknessMm }, context),
    { action: 'mark out', station, mode: 'marked', notes: size },
    { action: 'first piece', station, notes: [] },
    {
      action: 'run',
      station,
      mode: 'pedal',
      hits: places * strokesEach,
      notes: [piecesNote(context.row)],
    },
  ];
}

/** Bending: V opening, bend lines, stroke by a test piece. */
export function bendSteps(
  { bends, thicknessMm }: Extract<Operation, { is: 'bend' }>,
  context: StepContext,
): OperatorStep[] {
  const station = 'bending attachment';
  const { row, press, shop } = context;
  const alongRolling = bendsAlongRolling(row);
  const { veeMm } = bendVee(press, {
    thicknessMm,
    grade: row.grade,
    veeRatio: setting(shop, 'veeRatio'),
    ...(row.galvanized ? { galvanized: row.galvanized } : {}),
    ...(alongRolling === undefined ? {} : { alongRolling }),
  });
  const at = row.bends?.at;
  return [
    { action: 'lock out', station, notes: [] },
    ...(veeMm === undefined ? [] : [{ action: 'tools', station, notes: [{ is: 'vee', veeMm }] } as const]),
    {
      action: 'mark out',
      station,
      mode: 'marked',
      notes: [{ is: 'bend at', ...(at ? { places: at } : {}) }],
    },
    ...strokeSteps({ operation: 'bend', thicknessMm }, context),
    { action: 'first piece', station, notes: [] },
    {
      action: 'run',
      station,
      mode: 'pedal',
      hits: bends,
      notes: [piecesNote(context.row)],
    },
  ];
}
