import type { FindingOf } from '../check/finding.js';
import type { CodeBasis, Thing } from '../check/rowFact.js';
import { toleranceMm } from '../part/tolerance.js';
import type { LengthUnit } from '../quantity/units.js';
import type { UnknownRule } from '../rule/leastDistance.js';
import { cellNames } from './cellWords.js';
import { edgeWords } from './edgeWords.js';
import { holeTitle } from '../row/job/rowJob.js';
import { isOpenBolt, isOpenPlace, openBoltSentence, openPlaceSentence } from './openDistances.js';
import { size } from './sizes.js';

type Distance = FindingOf<'distance'>;

const starts: Record<Distance['from'], string> = {
  center: 'from the center',
  'end radius': 'from the center of the end radius',
  rim: 'from the rim',
  line: 'from the line',
};

const practice = 'press practice: the steel left must be at least the thickness and half the hole';

/** A distance of the drawing that fails, or that is known and whose limit is not; empty where it is held. */
export function distanceSentence(finding: Distance, unit: LengthUnit): string {
  if (finding.outcome === 'held') return '';
  if (isOpenPlace(finding)) return openPlaceSentence([finding]);
  if (isOpenBolt(finding)) return openBoltSentence([finding]);
  const { given } = finding;
  if (finding.kind === 'between cuts') return betweenCuts(finding, unit);
  const who = whoOf(finding);
  const to = otherWords(finding);
  if (finding.kind === 'flange' && given.most < -toleranceMm) {
    return `${who}: ${to} crosses the line by ${size(-given.most, unit)}, and the steel beside it bends out of true (press practice). Correct Notch depth, Notch at or Bend at.`;
  }
  if (runsOver(finding)) {
    // How far it runs over is told once, of its rim.
    if (finding.from !== 'rim') return '';
    const [into, what] = overWords(finding, to);
    return `${who}: ${what} runs ${size(-given.most, unit)} ${into}.`;
  }
  const distance = `${size(Math.max(0, given.most), unit)} ${starts[finding.from]} to ${to}`;
  if (finding.outcome === 'open' && finding.basis?.unknown) {
    return `${who}: ${distance}: ${unknownWords(finding.basis, finding.basis.unknown)}`;
  }
  const limit = Number.isFinite(finding.limit.most) ? finding.limit.most : finding.limit.least;
  const under = `${distance} is under ${size(limit, unit)} (${ruleWords(finding)})`;
  if (finding.outcome === 'failed' || finding.missing.length === 0) return `${who}: ${under}.`;
  return `${who}: ${under}. Fill in ${cellNames(finding.missing)} to settle it.`;
}

function betweenCuts({ given, limit, between, ...rule }: Distance, unit: LengthUnit): string {
  const [a, b] = between.map(thingWords).sort();
  return `only ${size(given.most, unit)} of steel between ${a} and ${b}, under ${size(limit.most, unit)} (${ruleWords(rule)}).`;
}

/** A failure of a hole that lies over what it is checked against, wherever it may be. */
export function runsOver({ outcome, kind, given }: Distance): boolean {
  return outcome === 'failed' && kind !== 'flange' && given.most < -toleranceMm;
}

function whoOf({ group, between: [first] }: Distance): string {
  if (group !== undefined) return holeTitle(group);
  return first.is === 'bend' && first.index > 0 ? `bend ${first.index + 1}` : 'bend';
}

function overWords(finding: Distance, to: string): [string, string] {
  const [, other] = finding.between;
  if (other.is === 'hole') return [`into ${to}`, 'a hole'];
  if (other.is === 'edge' && (other.cause.is === 'notch' || other.cause.is === 'clip')) {
    return [`into ${to}`, 'the hole'];
  }
  return [`over ${to}`, 'the hole'];
}

function otherWords({ between: [first, other] }: Distance): string {
  if (other.is === 'hole') {
    return first.is === 'hole' && first.group === other.group
      ? 'the next hole'
      : `a hole of ${holeTitle(other.group)}`;
  }
  return thingWords(other);
}

function thingWords(thing: Thing): string {
  switch (thing.is) {
    case 'edge':
      return edgeWords(thing.cause);
    case 'bend':
      return thing.index === 0 ? 'the bend' : `bend ${thing.index + 1}`;
    case 'hole':
      return holeTitle(thing.group);
  }
}

/** What a distance was checked against: `AISC, sheared edge, bolt 3/4`. */
export function ruleWords({ kind, basis, face }: Pick<Distance, 'kind' | 'basis' | 'face'>): string {
  switch (kind) {
    case 'edge by practice':
    case 'spacing by practice':
      return practice;
    case 'heel':
      return `or the hole cuts into ${besideWords(face)}`;
    case 'between cuts':
      return 'press practice: at least the thickness must be left';
    case 'hole to bend':
      return 'press practice: twice the thickness and the inside radius, or the bend pulls the hole';
    case 'flange':
      return 'press practice: the flange must reach over the V opening';
    default:
      return basis ? basisWords(kind === 'clear distance by code', basis) : practice;
  }
}

/** What stands up beside a face. */
function besideWords(face: Distance['face']): string {
  if (face === 'web') return 'the flange';
  return face.startsWith('flange') ? 'the web' : 'the other leg';
}

export function basisWords(isClear: boolean, { code, edge, bolt, boltRead }: CodeBasis): string {
  return [
    code,
    ...(edge === undefined ? [] : [edge.endsWith(' end') ? edge : `${edge} edge`]),
    ...(bolt === undefined ? [] : [`bolt ${bolt}${boltRead ? ' taken from the hole' : ''}`]),
    ...(isClear ? ['clear distance'] : []),
  ].join(', ');
}

function unknownWords({ code, bolt }: CodeBasis, why: UnknownRule): string {
  switch (why) {
    case 'no bolt':
      return `the least by ${code} goes by the bolt, and none is given. Fill in Bolt, or none where it is no bolt hole.`;
    case 'bolt not in the table':
      return `${code} has no distance for bolt ${bolt}. Check it by hand.`;
    case 'oversize hole':
      return `the rule of ${code} for oversize holes is not built in. Check it by hand.`;
    case 'slot':
      return `the rule of ${code} for slots is not built in. Check it by hand.`;
    case 'shape of the hole':
      return `${code} has no rule for holes of this shape. Check it by hand.`;
  }
}
