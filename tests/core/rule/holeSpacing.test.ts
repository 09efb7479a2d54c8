import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { type EdgeCode, edgeCodes } from '../../../src/core/rule/edgeDistance.js';
import { type BoltedHole, leastHoleSpacing } from '../../../src/core/rule/holeSpacing.js';
import type { PairDirection } from '../../../src/core/rule/pairDirection.js';
import { leastPitchMm } from '../../../src/core/rule/pitch.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const round = (diameterMm: number): Hole => ({ shape: 'round', diameterMm });
const slot: Hole = { shape: 'slot', widthMm: 22, lengthMm: 50 };
const square: Hole = { shape: 'square', sideMm: 22 };
const bolted = (hole: Hole, size?: string): BoltedHole =>
  size === undefined ? { hole } : { hole, bolt: readBolt(size, 'Bolt', 'mm') };
const least = (
  first: BoltedHole,
  code: EdgeCode,
  direction: PairDirection = 'along',
  second: BoltedHole = first,
) => leastHoleSpacing({ holes: [first, second], direction, code });

describe('leastHoleSpacing: arguments', () => {
  it('refuses sizes that are not above zero, of either hole', () => {
    const good = bolted(round(22), 'M20');
    expect(refusal(() => least(good, 'EN', 'along', bolted(round(-1)))).argument).toBe('Hole');
    const bolt = { diameterMm: 0, system: 'mm', name: 'M0' } as const;
    for (const code of edgeCodes)
      expect(refusal(() => least({ hole: round(22), bolt }, code)).argument).toBe('Bolt');
  });
});

describe('leastHoleSpacing: what is not known', () => {
  it.each(['AISC', 'AISC 360-22', 'CSA', 'AS'] as const)('%s needs the bolts of both holes', (code) => {
    const unknown = { known: false, why: 'no bolt' };
    expect(least(bolted(round(22)), code)).toEqual(unknown);
    expect(least(bolted(round(22), 'M20'), code, 'along', bolted(round(22)))).toEqual(unknown);
  });

  it.each([
    ['CSA', 54],
    ['AS', 50],
  ] as const)('%s: slots, whose centers need no less than those of other holes', (code, failsUnderMm) => {
    const unknown = { known: false, why: 'slot', failsUnderMm };
    expect(least(bolted(slot, 'M20'), code)).toMatchObject(unknown);
    expect(least(bolted(round(22), 'M20'), code, 'along', bolted(slot, 'M20'))).toMatchObject(unknown);
  });

  it('EN: a square needs something between the round hole in it and the one around it', () => {
    const unknown = least(bolted(square), 'EN');
    expect(unknown).toMatchObject({ known: false, why: 'shape of the hole' });
    expect(unknown).toHaveProperty('failsUnderMm', 2.2 * 22);
    expect(unknown).toHaveProperty('holdsFromMm', 2.2 * 22 * Math.SQRT2);
    expect(least(bolted(square), 'EN', 'along', bolted(slot))).not.toHaveProperty('holdsFromMm');
  });
});

describe('leastHoleSpacing: limits', () => {
  it('under EN goes by the larger hole in the part, and needs no bolt', () => {
    expect(least(bolted(round(18)), 'EN', 'along', bolted(round(30)))).toMatchObject({ leastMm: 66 });
    expect(least(bolted(round(30)), 'EN', 'along', bolted(round(18)))).toMatchObject({ leastMm: 66 });
  });

  it('by the others goes by the larger bolt', () => {
    for (const code of ['AISC', 'CSA', 'AS'] as const) {
      const small = bolted(round(22), 'M20');
      const large = bolted(round(30), 'M27');
      const bolt = readBolt('M27', 'Bolt', 'mm');
      const leastMm = leastPitchMm({ bolt, code });
      expect(least(small, code, 'along', large)).toMatchObject({ leastMm });
      expect(least(large, code, 'along', small)).toMatchObject({ leastMm });
    }
  });

  it('only EN makes a difference by the direction, and never asks for more along than across', () => {
    for (const code of edgeCodes) {
      const pair = bolted(round(22), 'M20');
      const [along, across, oblique] = (['along', 'across', 'oblique'] as const).map((direction) => {
        const found = least(pair, code, direction);
        return found.known ? found.leastMm : Number.NaN;
      });
      if (code === 'EN') expect([along, across, oblique]).toEqual([2.2 * 22, 2.4 * 22, 2.4 * 22]);
      else expect([across, oblique]).toEqual([along, along]);
    }
  });

  it('measures slots under EN between the centers of their end radii', () => {
    expect(least(bolted(slot), 'EN').known && least(bolted(slot), 'EN')).toMatchObject({
      leastMm: 2.2 * 22,
      measuredFrom: 'end radius center',
    });
    expect(least(bolted(round(22)), 'EN')).toMatchObject({ measuredFrom: 'center' });
  });
});

describe('leastHoleSpacing: values', () => {
  it('asks for one bolt of clear steel under AISC, whatever the shape, and under no other code', () => {
    for (const hole of [round(22), slot, square]) {
      expect(least(bolted(hole, 'M20'), 'AISC')).toMatchObject({ known: true, clearMm: 20 });
    }
    for (const code of ['EN', 'CSA', 'AS'] as const) {
      expect(least(bolted(round(22), 'M20'), code)).not.toHaveProperty('clearMm');
    }
  });

  it('shows its working under every code, and gives the same with and without it', () => {
    for (const code of edgeCodes) {
      const input = {
        holes: [bolted(round(22), 'M20'), bolted(round(22), 'M20')],
        direction: 'along',
        code,
      } as const;
      const working = new Working();
      const shown = leastHoleSpacing(input, working);
      expect(leastHoleSpacing(input)).toEqual(shown);
      const results = working.steps.map(({ result }) => result.value);
      expect(shown.known && results).toContain(shown.known ? shown.leastMm : 0);
    }
  });
});

describe('leastHoleSpacing: two different holes under EN', () => {
  const [small, large, slotted] = [bolted(round(18)), bolted({ shape: 'square', sideMm: 30 }), bolted(slot)];

  it('a square beside a round hole is not known, whichever comes first: the larger of both decides', () => {
    for (const [first, second] of [
      [small, large],
      [large, small],
    ] as const) {
      const found = least(first, 'EN', 'along', second);
      expect(found).toMatchObject({ known: false, why: 'shape of the hole' });
      if (found.known) throw new Error('The shape is not known.');
      expect(found.failsUnderMm).toBeCloseTo(2.2 * 30, 9);
      expect(found.holdsFromMm).toBeCloseTo(2.2 * 30 * Math.SQRT2, 9);
    }
  });

  it('a slot beside a round hole is measured from the center of its end radius', () => {
    const pairs = [least(small, 'EN', 'along', slotted), least(slotted, 'EN', 'along', small)];
    for (const pair of pairs) expect(pair).toMatchObject({ known: true, measuredFrom: 'end radius center' });
    expect(least(small, 'EN')).toMatchObject({ known: true, measuredFrom: 'center' });
  });
});

describe('leastHoleSpacing: where it is from', () => {
  it.each([
    ['AISC', 'along', 'AISC 360-22 J3.4, until 2016 J3.3'],
    ['AISC 360-22', 'along', 'AISC 360-22 J3.4, until 2016 J3.3'],
    ['CSA', 'along', 'CSA S16, minimum pitch (from memory)'],
    ['AS', 'across', 'AS 4100, minimum pitch (from memory)'],
    ['EN', 'along', 'EN 1993-1-8 Table 3.3, p1'],
    ['EN', 'across', 'EN 1993-1-8 Table 3.3, p2'],
    ['EN', 'oblique', 'EN 1993-1-8 Table 3.3, L of staggered rows'],
  ] as const)('by %s, %s, is %s', (code, direction, source) => {
    expect(least(bolted(round(22), 'M20'), code, direction).source).toBe(source);
  });
});
