import type { Finding } from '../press/finding.js';
import { limitOf, roundingShare, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Section } from '../section/section.js';
import type { HolePlace } from './holePlace.js';
import type { HoleGroup } from './rowJob.js';

const unreachable = "Can't reach";
/** Room between the fillet and the die holder. Common practice, no source. */
const fitClearanceMm = 25.4 / 16;

/** Whether the punch gets to the holes: throat, standing legs and flanges, die holder against the fillet. */
export function reachFindings(
  press: Press,
  section: Section,
  group: HoleGroup,
  place: HolePlace,
  unit: LengthUnit,
): Finding[] {
  switch (place.element) {
    case 'plate':
      return throatFindings(press, plateReachMm(place), group, place, unit);
    case 'web':
      return webFindings(press, section, group, place, unit);
    default:
      return legFindings(press, section, group, place, unit);
  }
}

/** From the hole line to the long edge the work goes in from; undefined where the row does not say. */
function plateReachMm({ edgeMm, gageMm, widthMm }: HolePlace): number | undefined {
  if (edgeMm === undefined) return undefined;
  const lines = gageMm === undefined ? [edgeMm] : [edgeMm, edgeMm + gageMm];
  return Math.max(...lines.map((lineMm) => Math.min(lineMm, Math.abs(widthMm - lineMm))));
}

/** Work goes in from either side, so half its width is the farthest a hole can lie. */
function throatFindings(
  press: Press,
  reachMm: number | undefined,
  group: HoleGroup,
  place: HolePlace,
  unit: LengthUnit,
): Finding[] {
  const farthestMm = place.widthMm / 2;
  const throat = limitOf(press, 'punchThroat');
  if (typeof throat !== 'number' || farthestMm <= throat) return typeof throat === 'number' ? [] : [throat];
  if (reachMm === undefined) {
    return [
      {
        verdict: 'Not checked',
        governs: 'punch throat',
        note: `${group.title}: the throat was not checked, because Edge is blank.`,
      },
    ];
  }
  const what = `${group.title} at ${formatLength(reachMm, unit)} ${unit} from the nearer edge`;
  return withinLimit(press, { key: 'punchThroat', sizeMm: reachMm, what, unit, verdict: unreachable });
}

/** Webs are punched flanges up or down: the die holder must clear the flange beside it. */
function webFindings(
  press: Press,
  section: Section,
  group: HoleGroup,
  place: HolePlace,
  unit: LengthUnit,
): Finding[] {
  const edgeMm = place.edgeMm ?? place.widthMm / 2;
  const flangeMm = section.kind === 'channel' ? section.flangeThicknessMm : 0;
  return [
    ...throatFindings(press, plateReachMm({ ...place, edgeMm }), group, place, unit),
    ...holderFindings(press, edgeMm - flangeMm, `${group.title}: from the hole to the flange`, unit),
  ];
}

/** Legs and flanges lie on the die, the other leg or the web hanging down; the far side goes into the throat. */
function legFindings(
  press: Press,
  section: Section,
  group: HoleGroup,
  place: HolePlace,
  unit: LengthUnit,
): Finding[] {
  const hanging = hangingMm(section, place);
  const clear = withinLimit(press, {
    key: 'punchClearUnderDie',
    sizeMm: hanging,
    what: `the part hanging below the die, ${formatLength(hanging, unit)} ${unit},`,
    unit,
    verdict: unreachable,
  });
  if (place.gageMm === undefined) {
    const note = `${group.title}: reach was not checked, because Gage is blank.`;
    return [...clear, { verdict: 'Not checked', governs: 'gage', note }];
  }
  return [
    ...clear,
    ...withinLimit(press, {
      key: 'punchThroat',
      sizeMm: place.widthMm - place.gageMm,
      what: `${group.title}: from the hole to the toe`,
      unit,
      verdict: unreachable,
    }),
    ...holderFindings(
      press,
      place.gageMm - filletMm(section) - fitClearanceMm,
      `${group.title}: from the hole to the fillet`,
      unit,
    ),
  ];
}

function hangingMm(section: Section, place: HolePlace): number {
  if (section.kind === 'channel') return section.depthMm;
  if (section.kind !== 'angle') return 0;
  return place.widthMm === section.legAMm ? section.legBMm : section.legAMm;
}

/** From the heel to where the flat of the leg begins: thickness and root radius, or twice the thickness. */
function filletMm(section: Section): number {
  if (section.kind === 'channel') return section.webThicknessMm * 2;
  if (section.kind !== 'angle') return 0;
  return section.thicknessMm + (section.rootRadiusMm > 0 ? section.rootRadiusMm : section.thicknessMm);
}

function holderFindings(press: Press, roomMm: number, what: string, unit: LengthUnit): Finding[] {
  const half = limitOf(press, 'punchDieHalfWidth');
  if (typeof half !== 'number') return [half];
  if (!Number.isFinite(half) || roomMm >= half * (1 - roundingShare)) return [];
  const note = `${what} there are ${formatLength(Math.max(roomMm, 0), unit)} ${unit}; ${press.name}'s die holder needs ${formatLength(half, unit)}.`;
  return [{ verdict: unreachable, governs: 'punch die half width', note }];
}
