import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { pickTools } from '../../../src/core/row/pickTools.js';
import { toolText } from '../../../src/core/shop/toolText.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { readHole } from '../../../src/core/tooling/readHole.js';
import { Working } from '../../../src/core/working/working.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const headings = ['Press', 'Kind', 'Shape', 'Size', 'Length', 'Body', 'Holder', 'Height', 'Count'];
const steel = findGrade('A36', 'Grade');
const inch = 25.4;

type Row = Partial<
  Record<'Press' | 'Kind' | 'Shape' | 'Size' | 'Length' | 'Body' | 'Holder' | 'Count', CellValue>
>;
const punch = (Size: CellValue, more: Row = {}): Row => ({ Press: 'any', Kind: 'punch', Size, ...more });
const die = (Size: CellValue, more: Row = {}): Row => ({ Press: 'any', Kind: 'die', Size, ...more });

/** What is picked for a hole in 3/8 in, or another thickness. */
function pick(hole: string | Hole, tools: readonly Row[], thicknessIn = 3 / 8, cells: PressCells = {}) {
  const rows = tools.map((row) => headings.map((heading) => row[heading as keyof Row] ?? null));
  const shop = shopWith(cells, { tools: [headings, ...rows] });
  const [press] = shop.presses;
  if (!press) throw new Error('the sample has no press');
  const size = typeof hole === 'string' ? readHole(hole, 'Hole', 'in').hole : hole;
  const found = pickTools(press, size, thicknessIn * inch, steel, shop);
  if (!found) throw new Error('the shop has no list of tools');
  const text = (tool: typeof found.punch) => tool && toolText(tool, 'in');
  return { ...found, texts: [text(found.punch), text(found.die)] };
}

describe('the punch that is picked', () => {
  it('is of the size and shape of the hole', () => {
    const tools = [punch('11/16'), punch('13/16'), punch('13/16', { Shape: 'square' }), die('27/32')];
    expect(pick('13/16', tools).texts).toEqual(['Ø13/16', 'Ø27/32']);
    expect(pick('3/4', tools).punch).toBeUndefined();
    expect(pick('sq 13/16', tools).texts).toEqual(['square 13/16', undefined]);
  });

  it('is one that the press takes, where there is one', () => {
    const tools = [punch('13/16', { Body: 3 }), punch('13/16', { Body: '1-3/8' }), die('27/32')];
    expect(pick('13/16', tools, 3 / 8, { 'Punch body': '1-3/8' }).punch?.bodyMm).toBeCloseTo(1.375 * inch, 9);
    expect(pick('13/16', tools.slice(0, 1), 3 / 8, { 'Punch body': 2 })).not.toHaveProperty('punch');
    expect(pick('13/16', tools.slice(0, 1)).body).toBe('not known');
  });

  it('is the nearest in size, and not of another press nor one that is not on hand', () => {
    const tools = [punch('20.6 mm'), punch('13/16'), punch('13/16', { Press: 'Bay Z' })];
    expect(pick('13/16', tools).texts[0]).toBe('Ø13/16');
    expect(pick('13/16', [punch('13/16', { Count: 'none' })]).punch).toBeUndefined();
    expect(pick('13/16', [punch('13/16', { Press: 'Bay Z' })]).punch).toBeUndefined();
  });

  it('comes with its holder', () => {
    expect(pick('13/16', [punch('13/16', { Holder: 'Sleeve 2' })]).punch?.holder).toBe('Sleeve 2');
  });
});

describe('the die that is picked', () => {
  const dies = [die('27/32'), die('7/8'), die('15/16')];

  it('is the nearest to the hole with its clearance, by the thickness', () => {
    // 1/32 in to 1/2 in of thickness, 1/16 in above.
    expect(pick('13/16', [punch('13/16'), ...dies]).texts[1]).toBe('Ø27/32');
    expect(pick('13/16', [punch('13/16'), ...dies], 5 / 8).texts[1]).toBe('Ø7/8');
  });

  it('may be tighter or wider where the nearest is not on hand, from half to twice the clearance', () => {
    expect(pick('13/16', [die('27/32')], 5 / 8).texts[1]).toBe('Ø27/32');
    expect(pick('13/16', [die('15/16')], 5 / 8).texts[1]).toBe('Ø15/16');
    expect(pick('13/16', [die('15/16')]).die).toBeUndefined();
  });

  it('is the tighter of two that are as near', () => {
    expect(pick('1', [die('1-3/64'), die('1-5/64')], 5 / 8).texts[1]).toBe('Ø1-3/64');
  });

  it('leaves the clearance in both directions of a slot', () => {
    const slots = [
      die('27/32', { Shape: 'slot', Length: '1-29/32' }),
      die('27/32', { Shape: 'slot', Length: '1-31/32' }),
    ];
    expect(pick('13/16x1-7/8', slots).texts[1]).toBe('slot 27/32 × 1-29/32');
  });
});

describe('picking tools', () => {
  const crib = [
    punch('13/16'),
    punch('13/16', { Press: 'Bay A', Body: '1-3/8' }),
    punch(0.8125, { Holder: 'B' }),
    punch('20.6 mm', { Body: 1 }),
    die('27/32'),
    die('27/32', { Press: 'Bay A' }),
    die('21.5 mm'),
    die('7/8'),
    die('55/64', { Count: 3 }),
  ];

  it('gives the same whatever the order of the rows, as the stamp of the shop is the same', () => {
    const thickness = fc.constantFrom(1 / 8, 3 / 8, 5 / 8);
    fc.assert(
      fc.property(fc.shuffledSubarray(crib, { minLength: crib.length }), thickness, (rows, thicknessIn) => {
        const cells = { 'Punch body': 2 };
        const [one, other] = [
          pick('13/16', crib, thicknessIn, cells),
          pick('13/16', rows, thicknessIn, cells),
        ];
        expect({ ...other.punch, written: '' }).toEqual({ ...one.punch, written: '' });
        expect({ ...other.die, written: '' }).toEqual({ ...one.die, written: '' });
      }),
      { numRuns: 200 },
    );
  });

  it('never picks a die outside half to twice the clearance, and none nearer is left lying', () => {
    const opening = fc.integer({ min: 40, max: 80 });
    fc.assert(
      fc.property(
        fc.array(opening, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(3 / 8, 3 / 4),
        (sizes, t) => {
          const hole: Hole = { shape: 'round', diameterMm: (48 / 64) * inch };
          const { die: found, clearanceMm } = pick(
            hole,
            sizes.map((size) => die(size / 64)),
            t,
          );
          const off = (size: number) => Math.abs(((size - 48) / 64) * inch - clearanceMm);
          const suiting = sizes.filter((size) => {
            const gap = ((size - 48) / 64) * inch;
            return gap >= clearanceMm / 2 - 0.05 && gap <= 2 * clearanceMm + 0.05;
          });
          expect(found === undefined).toBe(suiting.length === 0);
          if (found?.size.shape !== 'round') return;
          const own = (found.size.diameterMm / inch) * 64;
          expect(off(own)).toBeCloseTo(Math.min(...suiting.map(off)), 6);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is not done where the shop keeps no list', () => {
    const shop = shopWith();
    const [press] = shop.presses;
    if (!press) throw new Error('the sample has no press');
    expect(pickTools(press, { shape: 'round', diameterMm: 20 }, 10, steel, shop)).toBeUndefined();
  });

  it('tells the tools in its working', () => {
    const shop = shopWith(
      {},
      {
        tools: [
          ['Press', 'Kind', 'Size'],
          ['any', 'punch', '13/16'],
          ['any', 'die', '27/32'],
        ],
      },
    );
    const [press] = shop.presses;
    if (!press) throw new Error('the sample has no press');
    const working = new Working();
    pickTools(press, { shape: 'round', diameterMm: (13 / 16) * inch }, 10, steel, shop, working);
    const { values, result } = working.steps.at(-1) ?? {};
    expect(values?.map(({ value }) => value)).toEqual(['Ø13/16', expect.any(Number), 'Ø13/16', 'Ø27/32']);
    expect(result?.value).toBe('OK');
  });
});
