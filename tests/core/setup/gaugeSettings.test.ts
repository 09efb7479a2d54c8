import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GaugeReach } from '../../../src/core/setup/gaugeSetting.js';
import { gaugeSettings } from '../../../src/core/setup/gaugeSettings.js';
import { positionOf, type Turns } from '../../../src/core/setup/way.js';

const anywhere: GaugeReach = {
  fence: { least: 0, most: Infinity },
  leftStop: { least: 0, most: Infinity },
  rightStop: { least: 0, most: Infinity },
};
const inch = 25.4;
/** A base plate 12 by 10 with a hole 2 in from each end and side, in inches. */
const corners = [
  [2, 2],
  [10, 2],
  [2, 8],
  [10, 8],
].map(([x = 0, y = 0]) => ({ x: x * inch, y: y * inch }));
const plate = { lengthMm: 12 * inch, widthMm: 10 * inch };
const ofPlate = (turns: Turns, reach = anywhere) => gaugeSettings({ ...plate, holes: corners, turns, reach });
const shown = (turns: Turns, reach?: GaugeReach) =>
  ofPlate(turns, reach).settings.map(({ stop, stopMm, fenceMm, hits }) => [
    stop,
    Math.round(stopMm / inch),
    Math.round(fenceMm / inch),
    hits.map(({ hole, turn }) => `${hole + 1} ${turn}`).join(', '),
  ]);

describe('the settings of a base plate with a hole in each corner', () => {
  it('are four as it lies, the fence moved once', () => {
    expect(shown('none')).toEqual([
      ['left', 2, 2, '1 as it lies'],
      ['left', 10, 2, '2 as it lies'],
      ['left', 10, 8, '4 as it lies'],
      ['left', 2, 8, '3 as it lies'],
    ]);
  });

  it('are two with half turns', () => {
    expect(shown('half')).toEqual([
      ['left', 2, 2, '1 as it lies, 4 half turn'],
      ['left', 10, 2, '2 as it lies, 3 half turn'],
    ]);
  });

  it('are one where the plate may be turned over', () => {
    expect(shown('flip')).toEqual([
      ['left', 2, 2, '1 as it lies, 2 over endways, 3 over sideways, 4 half turn'],
    ]);
  });
});

describe('the reach of the gauges', () => {
  it('takes the other end to the other stop', () => {
    const reach = { ...anywhere, leftStop: { least: 0, most: 6 * inch } };
    expect(shown('none', reach).map(([stop, at, fence]) => [stop, at, fence])).toEqual([
      ['left', 2, 2],
      ['right', 2, 2],
      ['left', 2, 8],
      ['right', 2, 8],
    ]);
  });

  it('turns the plate where the fence does not go so far', () => {
    const reach = { fence: { least: 0, most: 5 * inch }, leftStop: { least: 0, most: 5 * inch } };
    expect(shown('none', reach)).toEqual([['left', 2, 2, '1 as it lies']]);
    expect(ofPlate('none', reach).marked).toEqual([1, 2, 3]);
    expect(shown('half', reach)).toEqual([['left', 2, 2, '1 as it lies, 4 half turn']]);
    expect(ofPlate('half', reach).marked).toEqual([1, 2]);
    expect(ofPlate('flip', reach).marked).toEqual([]);
  });

  it('includes its own ends', () => {
    const reach = {
      fence: { least: 2 * inch, most: 8 * inch },
      leftStop: { least: 2 * inch, most: 10 * inch },
    };
    expect(ofPlate('none', reach).marked).toEqual([]);
    expect(ofPlate('none', { ...reach, fence: { least: 2 * inch, most: 7.99 * inch } }).marked).toEqual([
      2, 3,
    ]);
  });

  it('is that of no stop where there is none', () => {
    const reach = { fence: anywhere.fence };
    expect(ofPlate('flip', reach)).toEqual({ settings: [], marked: [0, 1, 2, 3] });
  });
});

describe('mating holes', () => {
  const mating = corners.map((hole) => ({ ...hole, mating: 'one end' as const }));

  it('have a setting each, all made one way round', () => {
    const { settings } = gaugeSettings({ ...plate, holes: mating, turns: 'flip', reach: anywhere });
    expect(settings.flatMap(({ hits }) => hits.map(({ turn }) => turn))).toEqual(Array(4).fill('as it lies'));
  });

  it('share it with holes that do not mate', () => {
    const holes = [...mating.slice(0, 1), ...corners.slice(1)];
    expect(gaugeSettings({ ...plate, holes, turns: 'flip', reach: anywhere }).settings).toHaveLength(1);
  });

  it('are all turned where only so all are reached', () => {
    const upper = corners.slice(2).map((hole) => ({ ...hole, mating: 'one end' as const }));
    const reach = { ...anywhere, fence: { least: 0, most: 3 * inch } };
    const { settings, marked } = gaugeSettings({ ...plate, holes: upper, turns: 'half', reach });
    expect(marked).toEqual([]);
    expect(settings.flatMap(({ hits }) => hits.map(({ turn }) => turn))).toEqual(['half turn', 'half turn']);
  });

  it('are not made from both ends, unless their holes are large enough for it', () => {
    const reach = {
      ...anywhere,
      leftStop: { least: 0, most: 5 * inch },
      rightStop: { least: 0, most: 5 * inch },
    };
    expect(gaugeSettings({ ...plate, holes: mating, turns: 'none', reach }).marked).toEqual([1, 3]);
    const large = corners.map((hole) => ({ ...hole, mating: 'either end' as const }));
    expect(gaugeSettings({ ...plate, holes: large, turns: 'none', reach }).marked).toEqual([]);
  });
});

describe('settings of any holes', () => {
  const hole = fc.record({ x: fc.integer({ min: 1, max: 399 }), y: fc.integer({ min: 1, max: 199 }) });
  const holes = fc.uniqueArray(hole, { maxLength: 60, selector: ({ x, y }) => `${x} ${y}` });
  const turns = fc.constantFrom<Turns>('none', 'half', 'flip');
  const range = fc
    .tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 50, max: 400 }))
    .map(([a, b]) => ({ least: Math.min(a, b), most: Math.max(a, b) }));
  const reach = fc.record({ fence: range, leftStop: range, rightStop: range });
  const size = { lengthMm: 400, widthMm: 200 };

  it('give every hole once, where it stands, within reach', () => {
    fc.assert(
      fc.property(holes, turns, reach, (given, allowed, within) => {
        const { settings, marked } = gaugeSettings({ ...size, holes: given, turns: allowed, reach: within });
        const made = settings.flatMap(({ hits }) => hits.map((hit) => hit.hole));
        expect([...made, ...marked].sort((a, b) => a - b)).toEqual(given.map((_, at) => at));
        for (const { stop, stopMm, fenceMm, hits } of settings) {
          const stopReach = stop === 'left' ? within.leftStop : within.rightStop;
          expect(stopMm).toBeGreaterThanOrEqual(stopReach.least);
          expect(stopMm).toBeLessThanOrEqual(stopReach.most);
          expect(fenceMm).toBeGreaterThanOrEqual(within.fence.least);
          expect(fenceMm).toBeLessThanOrEqual(within.fence.most);
          for (const hit of hits) {
            const center = given[hit.hole] ?? { x: NaN, y: NaN };
            expect(positionOf(center, { turn: hit.turn, stop }, size)).toEqual({ stopMm, fenceMm });
          }
        }
      }),
      { numRuns: 500, seed: 7 },
    );
  });
});
