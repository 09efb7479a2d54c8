import type { Notching, Operation } from './operations.js';
import type { OperatorStep, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';
import { strokeSteps } from './strokeSteps.js';

/** Notching: lock out, stroke, mark out, first piece, run. */
export function notchSteps(notching: Notching<'notch'>, context: StepContext): OperatorStep[] {
  const { notches } = context.row;
  if (!notches) return [];
  const { widthMm, depthMm } = notches;
  const size: StepNote = { is: 'notch size', widthMm, depthMm, bites: notching.strokesEach };
  return onNotcher(notching, [size, { is: 'drill the corner first' }], context);
}

/** Clipping corners off in the notcher. */
export function clipSteps(clipping: Notching<'clip'>, context: StepContext): OperatorStep[] {
  const { clips } = context.row;
  if (!clips) return [];
  const { alongMm, acrossMm } = clips;
  return onNotcher(clipping, [{ is: 'clip size', alongMm, acrossMm }], context);
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
