import type { Finding } from '../check/finding.js';
import type { Unchecked } from '../check/rowFact.js';
import { shearHands } from '../press/shearHands.js';
import { type Hand, legAtShear } from '../part/cutHand.js';
import { limitOf, pressSource } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { type MiteredRow, miterHand } from './piece.js';

/** Whether the angle shear of a press makes the miters of a row: the leg, or both, and the hand. */
export function handFindings(press: Press, row: MiteredRow, working?: Working): Finding[] {
  const { section, miterLeftRad, miterRightRad, miterLeg } = row;
  if (section.kind !== 'angle' || (miterLeftRad === 0 && miterRightRad === 0)) return [];
  const legs = press.values.angleShearLegsMitered;
  const oneLeg = legs?.state === 'value' && legs.value === 1;
  if (oneLeg && miterLeg === 'both') {
    const fact = { rule: 'miter', on: 'angle shear', why: 'one leg only' } as const;
    return [{ ...fact, outcome: 'failed', verdict: 'No station', press: press.name }];
  }
  const found: Finding[] =
    oneLeg && miterLeg === undefined
      ? [openOn(press, 'Miter leg', 'mitered leg', 'angleShearLegsMitered')]
      : [];
  const hand = handFinding(press, row, oneLeg, working);
  return hand ? [...found, hand] : found;
}

/** With the standing leg down a shear makes one hand, up the other. What has no hand is made either way. */
function handFinding(press: Press, row: MiteredRow, oneLeg: boolean, working?: Working): Finding | undefined {
  const hand = miterHand(row);
  const hands = shearHands(press);
  if (hand === 'none' || hands.makes === 'both' || hands.makes === 'none') return undefined;
  if (hands.makes === 'unknown') {
    // Of the station and the legs it miters, the cut tells.
    if (hands.item !== 'angleShearLegPosition') return undefined;
    const unknown = limitOf(press, hands.item);
    return typeof unknown === 'number' ? undefined : unknown;
  }
  const item = 'angleShearLegPosition';
  if (typeof hand === 'object') return openOn(press, hand.gap, 'hand of the miter', item);
  const needed: readonly Hand[] = hand === 'both' ? ['left', 'right'] : [hand];
  const held = needed.every((each) => legAtShear(each) === hands.leg);
  // Both of two equal legs mitered have no hand.
  const mayHaveNone = !oneLeg && row.miterLeg === undefined && hasEqualLegs(row);
  if (!held && mayHaveNone) {
    return openOn(press, 'Miter leg', 'hand of the miter', item);
  }
  const verdict = held ? 'OK' : 'No station';
  working?.step({
    title: 'Hand of the miter',
    formula: 'right-hand: standing leg down; left-hand: up',
    values: [
      textValue('hand', 'hand of the miters of the part', hand),
      textValue('leg', `Angle shear leg position of ${press.name}`, hands.leg),
    ],
    result: textValue('verdict', 'outcome of the check', verdict),
    source: pressSource,
  });
  const fact = {
    rule: 'miter',
    on: 'angle shear',
    why: 'one hand only',
    leg: hands.leg,
    needs: hand,
  } as const;
  return { ...fact, outcome: held ? 'held' : 'failed', verdict, press: press.name };
}

function hasEqualLegs({ section }: MiteredRow): boolean {
  return section.kind === 'angle' && section.legAMm === section.legBMm;
}

function openOn(press: Press, cell: string, unchecked: Unchecked, item: PressItemKey): Finding {
  const fact = { rule: 'blank cell', cell: { cell }, unchecked, item } as const;
  return { ...fact, outcome: 'open', verdict: 'Not checked', press: press.name };
}
