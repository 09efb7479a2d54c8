import type { Notching, Operation } from './operations.js';
import type { OperatorStep, PlaceColumn, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';
import { strokeSteps } from './strokeSteps.js';

/** Notching: lock out, stroke, mark out, first piece, run. */
export function notchSteps(notching: Notching<'notch'>, context: StepContext): OperatorStep[] {
  const { notches } = context.row;
  if (!notches) return [];
  const { widthMm, depthMm } = notches;
  const size: StepNote = { is: 'notch size', widthMm, depthMm, bites: notching.strokesEach };
  return onNotcher(
    notching,
    [size, ...placeNote('Notch at', notches), { is: 'drill the corner first' }],
    context,
  );
}

/** Clipping corners off in the notcher. */
export function clipSteps(clipping: Notching<'clip'>, context: StepContext): OperatorStep[] {
  const { clips } = context.row;
  if (!clips) return [];
  const { alongMm, acrossMm } = clips;
  const size: StepNote = { is: 'clip size', alongMm, acrossMm };
  return onNotcher(clipping, [size, ...placeNote('Clip at', clips)], context);
}

function placeNote(column: PlaceColumn, { at }: { at?: readonly unknown[] }): StepNote[] {
  return at === undefined ? [{ is: 'place not given', column }] : [];
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
      notes: [{ is: 'pieces in all', count: context.row.qty }],
    },
  ];
}

/** Bending: the stroke is set with a test piece. */
export function bendSteps(
  { bends, thicknessMm }: Extract<Operation, { is: 'bend' }>,
  context: StepContext,
): OperatorStep[] {
  const station = 'bending attachment';
  return [
    { action: 'lock out', station, notes: [] },
    ...strokeSteps({ operation: 'bend', thicknessMm }, context),
    ...markBend(context),
    { action: 'first piece', station, notes: [] },
    {
      action: 'run',
      station,
      mode: 'pedal',
      hits: bends,
      notes: [{ is: 'pieces in all', count: context.row.qty }],
    },
  ];
}

/** Bend lines are marked out by hand. */
function markBend({ row: { bends } }: StepContext): OperatorStep[] {
  if (!bends) return [];
  const notes = placeNote('Bend at', bends);
  return [{ action: 'mark out', station: 'bending attachment', mode: 'marked', notes }];
}
