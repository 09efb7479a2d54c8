import { backGaugeSetting, gaugeReachMm } from '../cut/backGaugeSetting.js';
import { legAtShear } from '../part/cutHand.js';
import type { Operation } from './operations.js';
import type { OperatorStep, StepMode, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';
import { strokeSteps } from './strokeSteps.js';

/** Cutting the pieces off the bar: hold-down, stroke, back gauge, first piece, run. */
export function cutSteps(
  { station, cutsPerPiece, thicknessMm }: Extract<Operation, { is: 'cut' }>,
  context: StepContext,
): OperatorStep[] {
  const { row } = context;
  const miters = miterNotes(context);
  const gauge = backGauge(context);
  return [
    { action: 'hold-down', station, notes: [{ is: 'set to thickness', thicknessMm }] },
    ...strokeSteps({ operation: station, thicknessMm }, context),
    { action: 'back gauge', station, ...gauge, notes: [...gauge.notes, ...miters] },
    { action: 'first piece', station, notes: [] },
    {
      action: 'run',
      station,
      mode: gauge.mode,
      hits: cutsPerPiece,
      notes: [{ is: 'keep the drop side' }, { is: 'pieces in all', count: row.qty }],
    },
  ];
}

interface BackGauge {
  mode: StepMode;
  stopMm?: number;
  notes: StepNote[];
}

/** What is pushed to the back gauge, or why it is not known. */
function backGauge({ row, result, press }: StepContext): BackGauge {
  if (!result.piece) return { mode: 'pedal', notes: [{ is: 'length not given' }] };
  const { setting, reach, starts } = backGaugeSetting(row, result.piece, press);
  if ('gap' in setting) {
    const isSlug = setting.gap === 'Angle shear slug';
    return { mode: 'pedal', notes: [{ is: isSlug ? 'slug not known' : 'length not given' }] };
  }
  const stopMm = setting.mm;
  if (reach === 'within') {
    return {
      mode: 'back gauge',
      stopMm,
      notes: starts === 'touch' ? [{ is: 'touching starts the stroke' }] : [],
    };
  }
  const reachMm = gaugeReachMm(press);
  const note: StepNote =
    reachMm === undefined ? { is: 'no gauge known' } : { is: 'over the back gauge', reachMm };
  return { mode: 'pedal', stopMm, notes: [note] };
}

function miterNotes({ row, result }: StepContext): StepNote[] {
  const notes: StepNote[] = [];
  if (row.miterLeftRad > 0) notes.push({ is: 'miter', end: 'left', rad: row.miterLeftRad });
  if (row.miterRightRad > 0) notes.push({ is: 'miter', end: 'right', rad: row.miterRightRad });
  const hand = result.piece?.hand;
  if (row.section.kind !== 'angle' || hand === undefined || hand === 'none') return notes;
  if (typeof hand === 'object') return [...notes, { is: 'hand not given' }];
  const hands = hand === 'both' ? (['left', 'right'] as const) : [hand];
  return [...notes, ...hands.map((each): StepNote => ({ is: 'hand', hand: each, leg: legAtShear(each) }))];
}
