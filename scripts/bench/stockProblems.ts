// Stock problems made from a seed, in the styles of the literature on bin packing and cutting stock, and steel lists.
import type { StockLength, StockPart, StockProblem, Turning } from '../../src/core/stock/stockProblem.js';

export interface Family {
  name: string;
  problems: { name: string; make: () => StockProblem }[];
}

type Random = () => number;

/** Numbers from 0 to 1 (mulberry32). */
function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function whole(random: Random, least: number, most: number): number {
  return least + Math.floor(random() * (most - least + 1));
}

function counted(lengths: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const length of lengths) counts.set(length, (counts.get(length) ?? 0) + 1);
  return counts;
}

function problemOf(
  counts: Iterable<readonly [lengthMm: number, pieces: number]>,
  stocks: StockLength[],
  losses: Partial<StockProblem> = {},
): StockProblem {
  const parts = [...counts].map(([lengthMm, pieces]): StockPart => {
    return { lengthMm, pieces, leanLeftRad: 0, leanRightRad: 0 };
  });
  const none = { widthMm: 0, kerfMm: 0, trimMm: 0, gripMm: 0, keepMm: 0 };
  return { parts, stocks, turning: 'over and round', ...none, ...losses };
}

/** Pieces drawn evenly, one length of bar. */
function uniform(n: number, least: number, most: number, lengthMm: number, random: Random): StockProblem {
  return problemOf(counted(Array.from({ length: n }, () => whole(random, least, most))), [{ lengthMm }]);
}

/** Three pieces fill a bar: n / 3 bars without any rest. */
function triplets(n: number, random: Random): StockProblem {
  const lengths: number[] = [];
  for (let bar = 0; bar < n / 3; bar++) {
    const one = whole(random, 380, 490);
    const two = whole(random, 250, Math.floor((1000 - one) / 2));
    lengths.push(one, two, 1000 - one - two);
  }
  return problemOf(counted(lengths), [{ lengthMm: 1000 }]);
}

/** `m` lengths between shares of the bar, `average` pieces of each in the mean. */
function cutgen(m: number, from: number, to: number, average: number, random: Random): StockProblem {
  const lengths = new Set<number>();
  while (lengths.size < m) lengths.add(Math.floor((from + (to - from) * random()) * 10_000) + 1);
  return problemOf(shared([...lengths], m * average, random), [{ lengthMm: 10_000 }]);
}

/** Pieces drawn evenly, no two of one length: hard where bars hold few and nothing may be left over (hard28, Wäscher). */
function distinct(n: number, least: number, most: number, lengthMm: number, random: Random): StockProblem {
  const lengths = new Set<number>();
  while (lengths.size < n) lengths.add(whole(random, least, most));
  return problemOf(counted([...lengths]), [{ lengthMm }]);
}

/**
 * Bars full to the last millimeter, each of three to five pieces, two of a bar never like those of another: no bar may
 * waste anything (augmented non-IRUP style, with rounding up and without).
 */
function fullBars(bars: number, lengthMm: number, random: Random): StockProblem {
  const lengths: number[] = [];
  for (let bar = 0; bar < bars; bar++) {
    const pieces = whole(random, 3, 5);
    let left = lengthMm;
    for (let rest = pieces; rest > 1; rest--) {
      const mean = left / rest;
      const length = whole(random, Math.ceil(0.6 * mean), Math.floor(1.4 * mean));
      lengths.push(length);
      left -= length;
    }
    lengths.push(left);
  }
  return problemOf(counted(lengths), [{ lengthMm }]);
}

/** So many pieces over the lengths, at least one of each. */
function shared(lengths: readonly number[], pieces: number, random: Random): [number, number][] {
  const shares = lengths.map(() => random());
  const total = shares.reduce((sum, share) => sum + share, 0);
  let left = pieces - lengths.length;
  return lengths.map((length, at) => {
    const share = Math.floor(((shares[at] ?? 0) / total) * (pieces - lengths.length));
    const more = at === lengths.length - 1 ? left : Math.min(left, share);
    left -= more;
    return [length, 1 + more];
  });
}

const inch = 25.4;

interface SteelList {
  lengths: number;
  pieces: number;
  /** Inches. */
  grid?: number;
  longest?: number;
  stocks?: StockLength[];
  losses?: Partial<StockProblem>;
}

function steelList(list: SteelList, random: Random): StockProblem {
  const { lengths, pieces, grid = 1 / 16, longest = 240, stocks = [{ lengthMm: 480 * inch }], losses } = list;
  const all = new Set<number>();
  while (all.size < lengths) all.add(Math.round((6 + (longest - 6) * random() ** 1.3) / grid) * grid * inch);
  const kept = { kerfMm: inch / 8, trimMm: inch / 2, keepMm: 24 * inch, ...losses };
  return problemOf(shared([...all], pieces, random), stocks, kept);
}

/** Half of the pieces mitered, at one end or at both, as frames and rails have them. */
function miteredList(lengths: number, pieces: number, turning: Turning, random: Random): StockProblem {
  const problem = steelList({ lengths, pieces }, random);
  const angles = [45, 45, 45, 30, 60, 22.5].map((degrees) => (degrees * Math.PI) / 180);
  const lean = () => (random() < 0.5 ? 1 : -1) * (angles[whole(random, 0, angles.length - 1)] ?? 0);
  return {
    ...problem,
    turning,
    widthMm: 2 * inch,
    parts: problem.parts.map((part, at) => {
      if (at % 2 === 1) return part;
      const left = lean();
      const isBoth = random() < 0.6;
      const right = isBoth ? (random() < 0.7 ? -left : lean()) : 0;
      // The miters must not meet.
      const lengthMm = Math.max(part.lengthMm, 12 * inch);
      return { ...part, lengthMm, leanLeftRad: left, leanRightRad: right };
    }),
  };
}

function priced(random: Random): StockLength[] {
  return [20, 30, 40, 60]
    .slice(whole(random, 0, 2))
    .map((feet) => ({ lengthMm: feet * 304.8, price: Math.round(feet * (4 + random()) * 100) / 100 }));
}

/** Bars on hand of odd lengths for part of the list, and one length to buy, or none. */
function limited(random: Random, isEnough: boolean): StockLength[] {
  const onHand = Array.from({ length: whole(random, 2, 5) }, () => ({
    lengthMm: whole(random, 100, 480) * inch,
    available: whole(random, 1, 12),
  }));
  return [...onHand, { lengthMm: 480 * inch, ...(isEnough ? {} : { available: whole(random, 20, 60) }) }];
}

const each = <T, R>(values: readonly T[], of: (value: T) => R[]): R[] => values.flatMap(of);
const times = (n: number): number[] => Array.from({ length: n }, (_, at) => at + 1);

/** All instances by family, always the same. */
export function families(): Family[] {
  let seed = 0;
  const one = (name: string, make: (random: Random) => StockProblem) => {
    const own = ++seed * 7919;
    return { name: `${name} #${String(own)}`, make: () => make(randomFrom(own)) };
  };
  const many = (n: number, name: string, make: (random: Random) => StockProblem) =>
    times(n).map(() => one(name, make));
  const n50 = [50, 100, 200, 500];
  return [
    {
      name: 'triplets',
      problems: each([60, 120, 249, 501], (n) => many(20, `triplets ${n}`, (r) => triplets(n, r))),
    },
    {
      name: 'uniform 20–100 in 150',
      problems: each([120, 250, 500, 1000], (n) =>
        many(15, `uniform ${n}`, (r) => uniform(n, 20, 100, 150, r)),
      ),
    },
    {
      name: 'Scholl 1 style',
      problems: each(n50, (n) =>
        each([100, 120, 150], (size) =>
          each([1, 20, 30], (least) =>
            many(2, `Scholl 1 ${n} ${size} ${least}`, (r) => uniform(n, least, 100, size, r)),
          ),
        ),
      ),
    },
    {
      name: 'Scholl 2 style',
      problems: each(n50, (n) =>
        each([3, 5, 7, 9], (inBar) =>
          each([0.2, 0.5, 0.9], (spread) => {
            const [least, most] = [1 - spread, 1 + spread].map((of) => Math.round((1000 / inBar) * of));
            return many(2, `Scholl 2 ${n} ${inBar} ${spread}`, (r) =>
              uniform(n, least ?? 1, most ?? 1, 1000, r),
            );
          }),
        ),
      ),
    },
    {
      name: 'Scholl 3 style',
      problems: many(20, 'Scholl 3', (r) => uniform(200, 20_000, 35_000, 100_000, r)),
    },
    {
      name: 'cutgen style',
      problems: each([10, 20, 30, 40, 50], (m) =>
        each([10, 100], (average) =>
          each([0.2, 0.8], (to) =>
            each(to === 0.8 ? [0.01, 0.2] : [0.01], (from) =>
              many(4, `cutgen ${m} ${from}–${to} ${average}`, (r) => cutgen(m, from, to, average, r)),
            ),
          ),
        ),
      ),
    },
    {
      name: 'steel lists',
      problems: each(
        [
          [20, 200],
          [60, 800],
          [100, 3000],
          [200, 2000],
          [200, 10_000],
        ] as const,
        ([lengths, pieces]) => [
          ...many(3, `steel ${lengths} ${pieces} 1/16`, (r) => steelList({ lengths, pieces }, r)),
          ...many(3, `steel ${lengths} ${pieces} 1/4 grip`, (r) =>
            steelList({ lengths, pieces, grid: 1 / 4, losses: { gripMm: 4 * inch } }, r),
          ),
          ...many(3, `steel ${lengths} ${pieces} 20 ft, no kerf`, (r) =>
            steelList(
              { lengths, pieces, longest: 200, stocks: [{ lengthMm: 6096 }], losses: { kerfMm: 0 } },
              r,
            ),
          ),
          ...many(2, `steel ${lengths} ${pieces} mm`, (r) =>
            steelList(
              { lengths, pieces, grid: 1 / inch, stocks: [{ lengthMm: 12_000 }], losses: { kerfMm: 3 } },
              r,
            ),
          ),
        ],
      ),
    },
    {
      name: 'several priced lengths',
      problems: each(
        [
          [20, 200],
          [60, 800],
          [200, 2000],
        ] as const,
        ([lengths, pieces]) => [
          ...many(10, `priced ${lengths} ${pieces}`, (r) =>
            steelList({ lengths, pieces, stocks: priced(r) }, r),
          ),
          ...many(4, `by length ${lengths} ${pieces}`, (r) =>
            steelList({ lengths, pieces, stocks: priced(r).map(({ lengthMm }) => ({ lengthMm })) }, r),
          ),
        ],
      ),
    },
    {
      name: 'bars on hand',
      problems: each(
        [
          [10, 80],
          [20, 200],
          [60, 800],
        ] as const,
        ([lengths, pieces]) => [
          ...many(10, `on hand ${lengths} ${pieces}`, (r) =>
            steelList({ lengths, pieces, stocks: limited(r, true) }, r),
          ),
        ],
      ),
    },
    {
      name: 'few bars on hand',
      problems: each([12, 25] as const, (lengths) =>
        many(6, `few ${lengths}`, (r) =>
          steelList({ lengths, pieces: lengths * 10, stocks: limited(r, false) }, r),
        ),
      ),
    },
    {
      name: 'mitered lists',
      problems: each(['over and round', 'round', 'none'] as const, (turning) => [
        ...many(4, `mitered 20 200 ${turning}`, (r) => miteredList(20, 200, turning, r)),
        ...many(4, `mitered 60 800 ${turning}`, (r) => miteredList(60, 800, turning, r)),
      ]),
    },
    {
      name: 'large uniform',
      problems: each(
        [
          [200, 1000],
          [500, 1000],
          [500, 100_000],
        ] as const,
        ([n, lengthMm]) =>
          each([1, 0.2], (share) =>
            many(2, `uniform ${n} in ${lengthMm} from ${share}`, (r) =>
              uniform(n, Math.ceil(0.05 * share * lengthMm), Math.floor(0.7 * lengthMm), lengthMm, r),
            ),
          ),
      ),
    },
    {
      name: 'hard28 style',
      problems: each([160, 180, 200], (n) => many(4, `hard28 ${n}`, (r) => distinct(n, 1, 800, 1000, r))),
    },
    {
      name: 'Wäscher style',
      problems: each([60, 120, 240], (n) =>
        each([0.5, 0.8], (share) =>
          many(3, `Wäscher ${n} ${share}`, (r) => distinct(n, 150, 10_000 * share, 10_000, r)),
        ),
      ),
    },
    {
      name: 'full bars',
      problems: each([10, 25, 50, 100], (bars) =>
        each([1000, 10_000], (lengthMm) =>
          many(3, `full bars ${bars} ${lengthMm}`, (r) => fullBars(bars, lengthMm, r)),
        ),
      ),
    },
  ];
}
