import type { Finding } from '../press/finding.js';
import { limitOf, limitStep, roundingShare, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { AnySection } from '../section/section.js';
import type { Working } from '../working/working.js';
import type { HolePlace } from './holePlace.js';
import type { HoleGroup } from './rowJob.js';

const unreachable = "Can't reach";
/** Room between the fillet and the die holder. Common practice, no source. */
const fitClearanceMm = 25.4 / 16;

/** A hole group on a press. */
export interface HoleOnPress {
  press: Press;
  section: AnySection;
  group: HoleGroup;
  place: HolePlace;
  unit: LengthUnit;
}

/** Whether the punch gets to the holes: throat, standing legs and flanges, die holder against the fillet. */
export function reachFindings(hole: HoleOnPress, working?: Working): Finding[] {
  switch (hole.place.element) {
    case 'plate':
      return throatFindings(hole, plateReachMm(hole.place, hole.group), working);
    case 'web':
      return webFindings(hole, working);
    default:
      return legFindings(hole, working);
  }
}

/** From the hole line to the long edge the work goes in from; undefined where the row does not say. */
function plateReachMm({ edgeMm, gageMm, widthMm }: HolePlace, group?: HoleGroup): number | undefined {
  const placed = group?.holesAt?.map(({ yMm }) => yMm);
  if (edgeMm === undefined && !placed) return undefined;
  const edge = edgeMm ?? 0;
  const lines = placed ?? (gageMm === undefined ? [edge] : [edge, edge + gageMm]);
  return Math.max(...lines.map((lineMm) => Math.min(lineMm, Math.abs(widthMm - lineMm))));
}

/** Work goes in from either side, so half its width is the farthest a hole can lie. */
function throatFindings(hole: HoleOnPress, givenMm: number | undefined, working?: Working): Finding[] {
  const { press, group, place, unit } = hole;
  const farthestMm = place.widthMm / 2;
  const throat = limitOf(press, 'punchThroat');
  if (typeof throat === 'number' && farthestMm > throat && givenMm === undefined) {
    const note = `${group.title}: the throat was not checked, because Edge is blank.`;
    return [{ verdict: 'Not checked', governs: 'punch throat', note }];
  }
  const reachMm = Math.min(givenMm ?? farthestMm, farthestMm);
  const what = `${group.title} at ${formatLength(reachMm, unit)} ${unit} from the nearer edge`;
  const check = {
    key: 'punchThroat',
    sizeMm: reachMm,
    what,
    meaning: 'from the hole to the nearer edge',
    unit,
    verdict: unreachable,
  } as const;
  return withinLimit(press, check, working);
}

/** Webs are punched flanges up or down: the die holder must clear the flange beside it. */
function webFindings(hole: HoleOnPress, working?: Working): Finding[] {
  const { place, section } = hole;
  const edgeMm = place.edgeMm ?? place.widthMm / 2;
  const flangeMm = section.kind === 'channel' ? section.flangeThicknessMm : 0;
  return [
    ...throatFindings(hole, plateReachMm({ ...place, edgeMm }), working),
    ...holderFindings(hole, edgeMm - flangeMm, 'from the hole to the flange', working),
  ];
}

/** Legs and flanges lie on the die, the other leg or the web hanging down; the far side goes into the throat. */
function legFindings(hole: HoleOnPress, working?: Working): Finding[] {
  const { press, section, group, place, unit } = hole;
  const sizeMm = hangingMm(section, place);
  const what = `the part hanging below the die, ${formatLength(sizeMm, unit)} ${unit},`;
  const hanging = {
    key: 'punchClearUnderDie',
    sizeMm,
    what,
    meaning: 'part hanging below the die',
    unit,
    verdict: unreachable,
  } as const;
  const clear = withinLimit(press, hanging, working);
  if (place.gageMm === undefined) {
    const note = `${group.title}: reach was not checked, because Gage is blank.`;
    return [...clear, { verdict: 'Not checked', governs: 'gage', note }];
  }
  const toToe = {
    key: 'punchThroat',
    sizeMm: place.widthMm - place.gageMm,
    what: `${group.title}: from the hole to the toe`,
    meaning: 'from the hole to the toe',
    unit,
    verdict: unreachable,
  } as const;
  const roomMm = place.gageMm - filletMm(section) - fitClearanceMm;
  return [
    ...clear,
    ...withinLimit(press, toToe, working),
    ...holderFindings(hole, roomMm, 'from the hole to the fillet', working),
  ];
}

function hangingMm(section: AnySection, place: HolePlace): number {
  if (section.kind === 'channel') return section.depthMm;
  if (section.kind !== 'angle') return 0;
  return place.widthMm === section.legAMm ? section.legBMm : section.legAMm;
}

/** From the heel to where the flat of the leg begins: thickness and root radius, or twice the thickness. */
function filletMm(section: AnySection): number {
  if (section.kind === 'channel') return section.webThicknessMm * 2;
  if (section.kind !== 'angle') return 0;
  return section.thicknessMm + (section.rootRadiusMm > 0 ? section.rootRadiusMm : section.thicknessMm);
}

/** Whether the die holder fits between the hole and the fillet or flange beside it. */
function holderFindings(
  { press, group, unit }: HoleOnPress,
  roomMm: number,
  where: string,
  working?: Working,
): Finding[] {
  const key = 'punchDieHalfWidth';
  const half = limitOf(press, key);
  const fits = typeof half === 'number' && (!Number.isFinite(half) || roomMm >= half * (1 - roundingShare));
  const outcome = typeof half !== 'number' ? half.verdict : fits ? 'OK' : unreachable;
  limitStep(working, press, key, { kind: 'length', value: roomMm, meaning: where }, '≥', outcome);
  if (typeof half !== 'number') return [half];
  if (fits) return [];
  const room = formatLength(Math.max(roomMm, 0), unit);
  const note = `${group.title}: ${where} there are ${room} ${unit}; ${press.name}'s die holder needs ${formatLength(half, unit)} ${unit}.`;
  return [{ verdict: unreachable, governs: 'punch die half width', note }];
}
