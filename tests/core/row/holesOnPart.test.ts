// Whether the holes of a row lie on its part. The expected places are added up by hand from end, pitch, edge and gage.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/readHeadings.js';
import { bayA, settingTable, shopWith } from '../../support/sampleShop.js';

type Row = Record<string, CellValue>;

/** Bay A in a millimetre shop: every size with its inch mark. */
const notSizes = /force|share|strength|rake|allowance|heaviest|mitered|V openings/i;
const inches = Object.entries(bayA).map(([item, value]): [string, CellValue] => {
  const isSize = !notSizes.test(item) && /^\d/.test(String(value));
  return [item, isSize ? `${value} in` : value];
});
const shop = shopWith(Object.fromEntries(inches), { settings: settingTable({ Units: 'mm' }) });
/** 35 + 3 · 90 = 305 mm. */
const four: Row = { Section: 'PL10x150', Hole: 18, Holes: 4, Edge: 35, End: 35, Pitch: 90 };

function checked(row: Row) {
  const whole: Row = { Qty: 1, Grade: 'S275', Length: 200, ...row };
  const result = checkRow(Object.values(whole), readHeadings(Object.keys(whole)), shop);
  if (result.blank) throw new Error('the row is blank');
  return result;
}

const offPart = (row: Row) =>
  checked(row)
    .findings.filter(({ verdict }) => verdict === 'Check input')
    .map(({ note }) => note);

describe('holes along a part', () => {
  it('that reach beyond its length are told with what to correct', () => {
    const { verdict, governs } = checked(four);
    expect({ verdict, governs }).toEqual({ verdict: 'Check input', governs: 'Hole' });
    expect(offPart(four)).toEqual([
      'Hole: 4 holes at pitch 90 mm from 35 mm reach to 305 mm; the part is 200 mm long. Correct Length, End or Pitch, or give Gage where they stand in two lines.',
    ]);
  });

  it('stand in two lines where a plate has a gage: half as many along it', () => {
    // 35 + 1 · 90 = 125 mm; six of them reach to 35 + 2 · 90 = 215 mm.
    expect(offPart({ ...four, Gage: 80 })).toEqual([]);
    expect(offPart({ ...four, Holes: 6, Gage: 80 })).toEqual([
      'Hole: 6 holes in two lines at pitch 90 mm from 35 mm reach to 215 mm; the part is 200 mm long. Correct Length, End or Pitch, or give those of further lines under Hole 2.',
    ]);
  });

  it('may lie half a hole from the far end, not nearer', () => {
    // 305 + 18 / 2 = 314 mm.
    expect(offPart({ ...four, Length: 314 })).toEqual([]);
    expect(offPart({ ...four, Length: 313.9 })).toEqual([
      expect.stringContaining(
        'reach to 305 mm, so the last runs over the far end; the part is 313.9 mm long.',
      ),
    ]);
  });

  it('need their pitches and half a hole at each end where the row gives no end distance', () => {
    // 3 · 90 = 270 mm, with both halves 288 mm.
    const open = { ...four, End: null };
    expect(offPart({ ...open, Length: 288 })).toEqual([]);
    expect(offPart({ ...open, Length: 287 })).toEqual([
      'Hole: 4 holes at pitch 90 mm need 270 mm from the first to the last; the part is 287 mm long. Correct Length or Pitch, or give Gage where they stand in two lines.',
    ]);
  });

  it('one alone, or several without a pitch, are held to the end distance', () => {
    for (const Holes of [1, 3]) {
      const row = { ...four, Holes, Pitch: null };
      expect(offPart({ ...row, End: 191 })).toEqual([]);
      expect(offPart({ ...row, End: 192 })).toEqual([
        'Hole: a hole 192 mm from the end runs over the far end; the part is 200 mm long. Correct Length or End.',
      ]);
      expect(offPart({ ...row, End: 215 })).toEqual([
        'Hole: a hole 215 mm from the end lies beyond the part; the part is 200 mm long. Correct Length or End.',
      ]);
    }
  });

  it('in a leg may be meant for both legs, which is said', () => {
    const leg = { ...four, Section: 'L80x80x8', Edge: null, Gage: 45 };
    expect(offPart(leg)).toEqual([
      expect.stringMatching(/Correct Length, End or Pitch, or give those of the other leg under Hole 2\.$/),
    ]);
    const second = { Section: 'L80x80x8', 'Hole 2': 18, 'Holes 2': 4, 'End 2': 35, 'Pitch 2': 90 };
    expect(offPart(second)).toEqual([expect.stringMatching(/^Hole 2: .* under Hole 3\.$/)]);
  });

  it('are not judged where the place is not certain', () => {
    expect(offPart({ ...four, Length: null })).toEqual([]);
    expect(offPart({ ...four, Pitch: null })).toEqual([]);
    // A gage in a web may be between two lines.
    const web = { ...four, Section: 'C8X11.5', Edge: 60 };
    expect(offPart({ ...web, Gage: 80 })).toEqual([]);
    expect(offPart(web)).toEqual([expect.stringMatching(/Correct Length, End or Pitch\.$/)]);
  });

  it('of a mitred part are judged by the longest it can be, its length that of the short side', () => {
    // 150 · tan 45° = 150 mm; 155 + 150 = 305, and half a hole more: 164 mm.
    const mitred = { ...four, 'Miter left': 45 };
    expect(offPart({ ...mitred, Length: 164 })).toEqual([]);
    expect(offPart({ ...mitred, Length: 163.9 })).toHaveLength(1);
  });
});

describe('the far end', () => {
  // M16: 28 mm at a sheared end (AISC 360-10 Table J3.4M); 125 + 28 = 153.
  const two: Row = { ...four, Holes: 2, Bolt: 'M16' };

  it('is held to the least end distance where it is nearer than the end the row gives', () => {
    expect(checked({ ...two, Length: 153 }).verdict).toBe('OK');
    const { verdict, governs, note } = checked({ ...two, Length: 152 });
    expect({ verdict, governs }).toEqual({ verdict: 'Edge short', governs: 'far end distance' });
    expect(note).toMatch(/^Hole: far end distance 27 mm is under 28 mm \(AISC, sheared edge, bolt M16\)\./);
  });

  it('is not told again where both ends are the same, nor where it is not known', () => {
    const short = checked({ ...two, End: 27, Length: 27 + 90 + 27 });
    expect(short.findings.filter(({ verdict }) => verdict === 'Edge short')).toHaveLength(1);
    for (const open of [{ End: null }, { Pitch: null }, { 'Miter right': 10 }])
      expect(checked({ ...two, Length: 152, ...open }).note).not.toContain('far end');
  });
});

describe('holes across a part', () => {
  it('that lie beyond its width by edge distance and gage are told, not called short', () => {
    const row = { ...four, Edge: 70 };
    // 150 − 18 / 2 = 141 mm.
    expect(offPart({ ...row, Gage: 71 })).toEqual([]);
    expect(offPart({ ...row, Gage: 80 })).toEqual([
      'Hole: edge distance 70 mm and gage 80 mm reach to 150 mm; the part is 150 mm wide. Correct Edge or Gage.',
    ]);
    expect(checked({ ...row, Gage: 80 }).note).not.toContain('is under');
    expect(offPart({ ...row, Holes: 1, Gage: 80 })).toEqual([]);
  });

  it.each<[string, Row, string]>([
    [
      'an edge distance',
      { Edge: 142 },
      'edge distance 142 mm puts the hole over the far edge; the part is 150 mm wide.',
    ],
    ['a gage', { Gage: 160 }, 'gage 160 mm does not lie on it; the part is 150 mm wide.'],
    [
      'a gage of a leg',
      { Section: 'L80x80x8', Edge: null, Gage: 72 },
      'gage 72 mm puts the hole over the far edge; the leg is 80 mm wide.',
    ],
  ])('are told where %s alone is beyond it', (_what, row, text) => {
    expect(offPart({ ...four, Holes: 2, ...row })).toEqual([expect.stringContaining(text)]);
  });
});
