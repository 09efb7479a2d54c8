import type { OperatorStep, StepAction } from '../work/operatorStep.js';

/** What has to be minded at some steps, in the order of a card. */
export type CardCaution = 'guards' | 'lock out' | 'existing hole' | 'stripper' | 'touching starts';

const offPress = new Set<StepAction>(['pull stock', 'elsewhere first', 'elsewhere']);

/**
 * The cautions that some steps ask for, each once.
 * @param steps what an operator does
 * @returns guards where anything is done on a press; locking out where tools are changed; existing holes and the
 *   stripper where holes are punched; the back gauge where touching it starts the stroke
 * @example cautionsOf([{ action: 'run', station: 'punch', notes: [] }]) // ['guards', 'existing hole', 'stripper']
 * Source: common practice, no source.
 */
export function cautionsOf(steps: readonly OperatorStep[]): CardCaution[] {
  const onPress = steps.filter(({ action }) => !offPress.has(action));
  const punches = onPress.some(({ station }) => station === 'punch');
  return [
    ...(onPress.length > 0 ? (['guards'] as const) : []),
    ...(onPress.some(({ action }) => action === 'lock out' || action === 'tools')
      ? (['lock out'] as const)
      : []),
    ...(punches ? (['existing hole', 'stripper'] as const) : []),
    ...(onPress.some(({ notes }) => notes.some(({ is }) => is === 'touching starts the stroke'))
      ? (['touching starts'] as const)
      : []),
  ];
}
