import type { Range } from '../check/range.js';
import type { Point } from '../part/point.js';
import type { GaugeHit, GaugeInput, GaugeSetting, GaugeSettings } from './gaugeSetting.js';
import { inNearestOrder } from './nearestOrder.js';
import { orbitsOf } from './orbits.js';
import { apartMm, sameMm } from './samePosition.js';
import { positionOf, type Turn, type Way, waysOf } from './way.js';

/**
 * The fewest settings of stop and fence that give all holes of a plate.
 *
 * A setting gives every hole that an allowed turn brings to it. Turns form a group, so the holes that share a setting
 * are those that turns bring onto each other: an orbit. One setting within reach gives the whole orbit, none gives holes
 * of two, and so the fewest settings are the orbits that have one within reach. Mating holes are all made one way round,
 * so that length and width do not enter the distances between them: each has a setting of its own, which gives the other
 * holes of its orbit, too. Of all ways round the one is taken that reaches most holes and then needs fewest settings.
 *
 * @param input length and width of the plate and centers of holes in mm, from the left end and the bottom edge; allowed
 *   turns; reach of the gauges in mm
 * @returns settings with their holes, and the holes out of reach
 * Valid for holes on the plate, no two at one place; those less than 0.01 mm apart share a setting. Throws nothing.
 * @example gaugeSettings({ lengthMm: 300, widthMm: 200, holes: [{ x: 50, y: 50 }, { x: 250, y: 150 }], turns: 'half', reach: { fence: { least: 0, most: 500 }, leftStop: { least: 0, most: 900 } } }).settings.length // 1
 * Source: orbits of a group, plane geometry; the rule for mating holes is common practice, no source.
 */
export function gaugeSettings(input: GaugeInput): GaugeSettings {
  const { holes, turns } = input;
  const orbits = orbitsOf(holes, turns, input);
  const ways = waysOf(turns);
  const isMating = holes.some(({ mating }) => mating !== undefined);
  const [first = noSettings, ...others] = (isMating ? ways : ways.slice(0, 1)).map((way) =>
    settingsFor(orbits, way, ways, input),
  );
  const best = bestOf(first, others);
  return { settings: inNearestOrder(best.settings), marked: [...best.marked].sort((a, b) => a - b) };
}

const noSettings: GaugeSettings = { settings: [], marked: [] };

/** The first of those that leave fewest holes to mark out and then need fewest settings. */
export function bestOf<Found extends GaugeSettings>(first: Found, others: readonly Found[]): Found {
  const isBetter = (a: Found, b: Found) => {
    const fewer = a.marked.length - b.marked.length;
    return fewer === 0 ? a.settings.length < b.settings.length : fewer < 0;
  };
  return others.reduce((kept, each) => (isBetter(each, kept) ? each : kept), first);
}

/** The settings where mating holes are made one way round. */
function settingsFor(
  orbits: readonly (readonly number[])[],
  matingWay: Way,
  ways: readonly Way[],
  input: GaugeInput,
): GaugeSettings {
  const settings: GaugeSetting[] = [];
  const marked: number[] = [];
  for (const orbit of orbits) {
    const isMating = (hole: number) => input.holes[hole]?.mating !== undefined;
    const made: GaugeSetting[] = [];
    for (const hole of orbit.filter(isMating)) {
      const way = matingWays(hole, matingWay, input).find((each) => reaches(hole, each, input));
      if (way) made.push(settingOf(hole, way, [hole], ways, input));
      else marked.push(hole);
    }
    const others = orbit.filter((hole) => !isMating(hole));
    const [shared] = made;
    if (shared) settings.push(withHits(shared, others, ways, input), ...made.slice(1));
    else {
      const setting = bestSetting(others, ways, input);
      if (setting) settings.push(setting);
      else marked.push(...others);
    }
  }
  return { settings, marked };
}

/** The ways in which a mating hole may be made where all are made in one. */
function matingWays(hole: number, way: Way, { holes }: GaugeInput): Way[] {
  const other: Way = { turn: way.turn, stop: way.stop === 'left' ? 'right' : 'left' };
  return holes[hole]?.mating === 'either end' ? [way, other] : [way];
}

function centerOf(hole: number, { holes }: GaugeInput): Point {
  return holes[hole] ?? { x: 0, y: 0 };
}

function reaches(hole: number, way: Way, input: GaugeInput): boolean {
  const { stopMm, fenceMm } = positionOf(centerOf(hole, input), way, input);
  const { fence, leftStop, rightStop } = input.reach;
  const stop = way.stop === 'left' ? leftStop : rightStop;
  return stop !== undefined && isWithin(stopMm, stop) && isWithin(fenceMm, fence);
}

function isWithin(mm: number, { least, most }: Range): boolean {
  return mm >= least - sameMm && mm <= most + sameMm;
}

/** The setting that one hole asks for, with the turns that bring the others to it. */
function settingOf(
  hole: number,
  way: Way,
  orbit: readonly number[],
  ways: readonly Way[],
  input: GaugeInput,
): GaugeSetting {
  const position = positionOf(centerOf(hole, input), way, input);
  const bare = { ...position, stop: way.stop, hits: [{ hole, turn: way.turn }] };
  return withHits(
    bare,
    orbit.filter((each) => each !== hole),
    ways,
    input,
  );
}

function withHits(
  setting: GaugeSetting,
  more: readonly number[],
  ways: readonly Way[],
  input: GaugeInput,
): GaugeSetting {
  const hits = more.map((hole): GaugeHit => ({ hole, turn: turnTo(setting, hole, ways, input) }));
  return { ...setting, hits: [...setting.hits, ...hits].sort((a, b) => a.hole - b.hole) };
}

/** The turn that brings a hole of the same orbit to a setting. */
function turnTo(setting: GaugeSetting, hole: number, ways: readonly Way[], input: GaugeInput): Turn {
  const apart = (way: Way) => apartMm(positionOf(centerOf(hole, input), way, input), setting);
  const atThatStop = ways.filter(({ stop }) => stop === setting.stop);
  const nearest = atThatStop.reduce<Way | undefined>(
    (kept, each) => (kept && apart(kept) <= apart(each) ? kept : each),
    undefined,
  );
  return nearest?.turn ?? 'as it lies';
}

/** Of the settings that give an orbit, one within reach: most holes as the part lies, left stop, least fence and stop. */
function bestSetting(
  orbit: readonly number[],
  ways: readonly Way[],
  input: GaugeInput,
): GaugeSetting | undefined {
  const possible = orbit.flatMap((hole) =>
    ways.filter((way) => reaches(hole, way, input)).map((way) => settingOf(hole, way, orbit, ways, input)),
  );
  const asItLies = ({ hits }: GaugeSetting) => hits.filter(({ turn }) => turn === 'as it lies').length;
  const isPreferred = (a: GaugeSetting, b: GaugeSetting) =>
    asItLies(b) - asItLies(a) ||
    Number(a.stop === 'right') - Number(b.stop === 'right') ||
    a.fenceMm - b.fenceMm ||
    a.stopMm - b.stopMm;
  return possible.sort(isPreferred)[0];
}
