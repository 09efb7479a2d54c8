import { legAtShear } from '../part/cutHand.js';
import { miterKerfMm } from '../cut/miterKerf.js';
import { limitOf } from '../press/limit.js';
import { pressValue } from '../press/press.js';
import { slugMm } from './barsOf.js';
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

/** What is pushed to the back gauge: the edge that touches, and what the cut loses. */
function backGauge({ row, result, press }: StepContext): BackGauge {
  const { piece } = result;
  const edge = piece?.leftLong;
  if (!edge || edge.least < edge.most) return { mode: 'pedal', notes: [{ is: 'length not given' }] };
  const kerfMm = slugMm(row, press);
  if (kerfMm === undefined) return { mode: 'pedal', notes: [{ is: 'slug not known' }] };
  const lostMm = kerfMm === 0 ? 0 : miterKerfMm({ kerfMm, miterRad: row.miterRightRad });
  const stopMm = edge.most + lostMm;
  const reachMm = limitOf(press, 'backGaugeReach');
  if (typeof reachMm !== 'number') return { mode: 'pedal', stopMm, notes: [{ is: 'no gauge known' }] };
  if (stopMm > reachMm) return { mode: 'pedal', stopMm, notes: [{ is: 'over the back gauge', reachMm }] };
  const touch = pressValue(press, 'backGaugeStartsStroke');
  const starts = touch.state === 'value' && touch.value === 1;
  return { mode: 'back gauge', stopMm, notes: starts ? [{ is: 'touching starts the stroke' }] : [] };
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
