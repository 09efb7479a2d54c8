// Checked against trying everything: every set of up to eight holes of a small grid, every way to choose settings. Each set
// of mating holes is tried with one turn and one reach; with GAUGES=all with every turn and reach, which takes 10 s.
import { describe, expect, it } from 'vitest';
import type { GaugeHole, GaugeReach } from '../../../src/core/setup/gaugeSetting.js';
import { gaugeSettings } from '../../../src/core/setup/gaugeSettings.js';
import type { Turns } from '../../../src/core/setup/way.js';

interface Case {
  lengthMm: number;
  widthMm: number;
  holes: readonly GaugeHole[];
  turns: Turns;
  reach: GaugeReach;
}

type Complex = readonly [re: number, im: number];
/** The turns about the middle of the plate, as complex numbers: z, −z, conjugate, −conjugate. */
const turning: Record<Turns, readonly ((z: Complex) => Complex)[]> = {
  none: [(z) => z],
  half: [(z) => z, ([re, im]) => [-re, -im]],
  flip: [(z) => z, ([re, im]) => [-re, -im], ([re, im]) => [re, -im], ([re, im]) => [-re, im]],
};

interface Tried {
  turn: number;
  stop: 'left' | 'right';
  /** Stop and fence as text. */
  at: string;
}

/** Every way in which one hole can come under the punch within reach. */
function triedWays({ x, y }: GaugeHole, { lengthMm, widthMm, turns, reach }: Case): Tried[] {
  return turning[turns].flatMap((turned, turn) => {
    const [re, im] = turned([x - lengthMm / 2, y - widthMm / 2]);
    const fence = im + widthMm / 2;
    if (fence < reach.fence.least || fence > reach.fence.most) return [];
    const places = [
      ['left', re + lengthMm / 2, reach.leftStop],
      ['right', lengthMm / 2 - re, reach.rightStop],
    ] as const;
    return places.flatMap(([stop, mm, range]) =>
      range && mm >= range.least && mm <= range.most ? [{ turn, stop, at: `${stop} ${mm} ${fence}` }] : [],
    );
  });
}

/** The fewest holes that are left over, and then the fewest settings, of all there are. */
function byTryingAll(given: Case): [marked: number, settings: number] {
  const ways = given.holes.map((hole) => triedWays(hole, given));
  const isMating = given.holes.some(({ mating }) => mating);
  const stops = isMating ? (['left', 'right'] as const) : (['left'] as const);
  const turns = isMating ? turning[given.turns].map((_, turn) => turn) : [0];
  let best: [number, number] = [Infinity, Infinity];
  for (const stop of stops) {
    for (const turn of turns) {
      const gives = new Map<string, number>();
      for (const [hole, own] of ways.entries()) {
        const mating = given.holes[hole]?.mating;
        for (const way of own) {
          const isWrongTurn = mating !== undefined && way.turn !== turn;
          if (isWrongTurn || (mating === 'one end' && way.stop !== stop)) continue;
          gives.set(way.at, (gives.get(way.at) ?? 0) | (1 << hole));
        }
      }
      const found = fewest([...gives.values()], given.holes.length);
      if (found[0] < best[0] || (found[0] === best[0] && found[1] < best[1])) best = found;
    }
  }
  return best;
}

/** The fewest of these sets whose union is that of all: step by step, every union that can be made. */
function fewest(sets: readonly number[], holes: number): [number, number] {
  const all = sets.reduce((union, set) => union | set, 0);
  let left = 0;
  for (let hole = 0; hole < holes; hole++) if (!(all & (1 << hole))) left++;
  let made = new Set([0]);
  for (let count = 0; ; count++) {
    if (made.has(all)) return [left, count];
    const next = new Set<number>();
    for (const union of made) for (const set of sets) if ((union | set) !== union) next.add(union | set);
    made = next;
  }
}

const isWhole = process.env['GAUGES'] === 'all';
const allTurns = Object.keys(turning) as Turns[];

function subsets<Item>(items: readonly Item[], most: number): Item[][] {
  return items
    .reduce<Item[][]>((sets, item) => [...sets, ...sets.map((set) => [...set, item])], [[]])
    .filter(({ length }) => length <= most);
}

function grid(columns: number, rows: number): GaugeHole[] {
  return Array.from({ length: columns * rows }, (_, at) => ({
    x: 1 + (at % columns),
    y: 1 + Math.floor(at / columns),
  }));
}

function expectFewest(given: Case): void {
  const { settings, marked } = gaugeSettings(given);
  const found = [marked.length, settings.length];
  const fewestOfAll = byTryingAll(given);
  if (found[0] !== fewestOfAll[0] || found[1] !== fewestOfAll[1]) {
    expect(found, JSON.stringify(given)).toEqual(fewestOfAll);
  }
}

const ranges = {
  all: { least: 0, most: 99 },
  near: { least: 0, most: 2 },
  one: { least: 0, most: 1 },
  far: { least: 2, most: 99 },
};
const reaches: GaugeReach[] = [
  { fence: ranges.all, leftStop: ranges.all, rightStop: ranges.all },
  { fence: ranges.all, leftStop: ranges.all },
  { fence: ranges.all, rightStop: ranges.near },
  { fence: ranges.near, leftStop: ranges.near, rightStop: ranges.one },
  { fence: ranges.one, leftStop: ranges.all },
  { fence: ranges.far, leftStop: ranges.one, rightStop: ranges.far },
  { fence: ranges.all },
];

describe('the settings found are as few as can be', () => {
  it('for every set of up to eight holes of nine places, every turn and reach', () => {
    let cases = 0;
    for (const holes of subsets(grid(3, 3), 8)) {
      for (const turns of allTurns) {
        for (const reach of reaches) {
          expectFewest({ lengthMm: 4, widthMm: 4, holes, turns, reach });
          cases++;
        }
      }
    }
    expect(cases).toBe(511 * 3 * reaches.length);
  });

  it('for every set of holes of six places off the middle, each mating or not', () => {
    const kinds = [undefined, 'one end', 'either end'] as const;
    let cases = 0;
    const withKinds = grid(3, 2).reduce<GaugeHole[][]>(
      (sets, hole) => [
        ...sets,
        ...sets.flatMap((set) =>
          kinds.map((mating) => [...set, mating === undefined ? hole : { ...hole, mating }]),
        ),
      ],
      [[]],
    );
    for (const [number, holes] of withKinds.entries()) {
      const turned = isWhole ? allTurns : allTurns.slice(number % 3, (number % 3) + 1);
      const reached = isWhole ? reaches : reaches.slice(number % 7, (number % 7) + 1);
      for (const turns of turned) {
        for (const reach of reached) {
          expectFewest({ lengthMm: 4, widthMm: 3, holes, turns, reach });
          cases++;
        }
      }
    }
    expect(cases).toBe(4 ** 6 * (isWhole ? 3 * reaches.length : 1));
  });
});
