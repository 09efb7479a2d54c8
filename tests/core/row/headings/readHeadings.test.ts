import { describe, expect, it } from 'vitest';
import { groupFields, rowFields } from '../../../../src/core/row/headings/heading.js';
import { foreignHeadings } from '../../../../src/core/row/headings/headingWords.js';
import { headingNames, readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { refusalText } from '../../../support/refusal.js';

const at = (...cells: string[]) => readHeadings(['Section', ...cells]);

describe('readHeadings', () => {
  it.each(
    rowFields.flatMap(({ key, name, synonyms }) => [name, ...synonyms].map((text) => [text, key] as const)),
  )('reads "%s" as the column of %s', (text, key) => {
    const { fields } = readHeadings(key === 'section' ? [text] : ['Section', text.toUpperCase()]);
    expect(fields[key]?.at).toBe(key === 'section' ? 0 : 1);
  });

  it.each(
    groupFields.flatMap(({ key, name, synonyms }) => [name, ...synonyms].map((text) => [text, key] as const)),
  )('reads "%s" as the %s of the first holes, with a number of further ones', (text, key) => {
    const { groups } = at(text, `${text} 2`, `${text}3`);
    expect(groups.map((group) => group[key]?.at)).toEqual([1, 2, 3]);
  });

  it('takes the unit from the heading, and passes over columns it does not know', () => {
    const { fields, groups } = at('Length (mm)', 'Our remark', 'Edge [in]', '', 'Hole, mm');
    expect(fields.length).toEqual({ at: 1, heading: 'Length (mm)', unit: 'mm' });
    expect(groups[0]?.edge?.unit).toBe('in');
    expect(groups[0]?.hole?.unit).toBe('mm');
    expect(Object.keys(fields)).toEqual(['section', 'length']);
  });

  it('takes the canonical name before a synonym, in either order', () => {
    for (const cells of [
      ['Size', 'Section'],
      ['Section', 'Size'],
    ]) {
      expect(readHeadings(cells).fields.section?.heading).toBe('Section');
    }
  });

  it('refuses two columns of one meaning, naming both', () => {
    expect(refusalText(() => at('Qty', 'QTY'))).toBe(
      "Headings: 'Qty' and 'QTY' both mean Qty. Keep one, or call the right one Qty.",
    );
    expect(refusalText(() => at('Dwg', 'Drawing no'))).toContain("'Dwg' and 'Drawing no' both mean Drawing.");
    expect(refusalText(() => at('Hole 2', 'hole  2'))).toContain('both mean Hole');
  });

  it('takes the first of several names of a part', () => {
    expect(readHeadings(['Piece mark', 'Item', 'Section']).fields.mark?.at).toBe(0);
  });

  it.each([
    [[], 'nothing'],
    [['', null, ' '], 'nothing'],
    [['Mark', 'Qty'], 'Mark, Qty'],
    [[7, true], '7, true'],
  ])('refuses headings without a section: %j', (cells, read) => {
    expect(refusalText(() => readHeadings(cells))).toBe(
      `Headings: there is no Section column (read: ${read}). Give the row of headings; one must be Section.`,
    );
  });
});

describe('readHeadings: symbols of EN 1993-1-8', () => {
  it('reads them as end, edge, pitch, gage, hole, and letters beside them', () => {
    const { groups, fields } = at('e1', 'e2', 'p1', 'w', 'd0', 'n', 'Stk');
    expect(groups).toHaveLength(1);
    const [group = {}] = groups;
    expect([group.end?.at, group.edge?.at, group.pitch?.at, group.gage?.at]).toEqual([1, 2, 3, 4]);
    expect([group.hole?.at, group.holes?.at, fields.qty?.at]).toEqual([5, 6, 7]);
  });

  it.each(['e₁', 'e_1', 'E1', 'e1 (mm)', ' e 1 '])('reads %j as the end distance', (text) => {
    expect(at(text).groups[0]?.end?.at).toBe(1);
  });

  it('counts further groups behind them', () => {
    const { groups } = at('d0', 'e1', 'd0 2', 'e1 (2)', 'p2 2');
    expect(groups.map(({ hole, end, p2 }) => [hole?.at, end?.at, p2?.at])).toEqual([
      [1, 2, undefined],
      [3, 4, 5],
    ]);
  });

  it('reads p2, p3 and p4 beside a gage and a pitch', () => {
    const { groups } = at('p1', 'p2', 'p₃', 'p 4', 'w1', 'd0');
    const [{ pitch, p2, p3, p4, gage } = {}] = groups;
    expect([pitch, p2, p3, p4, gage].map((column) => column?.at)).toEqual([1, 2, 3, 4, 5]);
  });

  it('leaves single letters alone where no symbol stands beside them', () => {
    expect(at('n', 'w', 'd', 't').groups).toEqual([]);
  });
});

describe('readHeadings: other languages', () => {
  const all = Object.entries(foreignHeadings).flatMap(([key, texts]) =>
    texts.map((text) => [text, key] as const),
  );
  it.each(all)('reads "%s" as the column of %s', (text, key) => {
    const headings = readHeadings(key === 'section' ? [text] : ['Section', text.toUpperCase()]);
    const columns = { ...headings.fields, ...headings.groups[0] } as Record<
      string,
      { at: number } | undefined
    >;
    expect(columns[key]?.at).toBe(key === 'section' ? 0 : 1);
  });

  it('no word means two columns', () => {
    const texts = [
      ...all,
      ...[...rowFields, ...groupFields].flatMap(({ key, name, synonyms }) =>
        [name.toLowerCase(), ...synonyms].map((text) => [text, key] as const),
      ),
    ];
    const keys = new Map<string, string>();
    for (const [text, key] of texts) {
      expect(keys.get(text) ?? key, text).toBe(key);
      keys.set(text, key);
    }
  });
});

describe('readHeadings: invisible characters', () => {
  it('are not part of a heading', () => {
    const { fields } = readHeadings(['\uFEFFSec\u00ADtion', 'Len\u200Bgth (mm)\u200E']);
    expect(fields.section?.at).toBe(0);
    expect(fields.length).toMatchObject({ at: 1, unit: 'mm' });
  });
});

describe('readHeadings: how lists write them', () => {
  it.each([
    ['Lochzahl', 'holes'],
    ['Anz. Löcher', 'holes'],
    ['End Dist', 'end'],
    ['Bohrung Ø', 'hole'],
    ['Loch-Ø', 'hole'],
    ['Ø Bolt', 'bolt'],
    ['Hole Ø', 'hole'],
    ['Galv.', 'finish'],
    ['Zeichnungs-Nr.', 'drawing'],
  ])('%s is %s', (text, key) => {
    const { fields, groups } = at(text);
    expect(Object.entries({ ...fields, ...groups[0] }).find(([, column]) => column.at === 1)?.[0]).toBe(key);
  });

  it('does not take a mark of diameter alone, or beside anything else, for a hole', () => {
    for (const text of ['Ø', 'Ø Länge', 'Edge Ø']) expect(at(text).groups).toEqual([]);
  });
});

describe('headingNames', () => {
  it('names each column by itself, those that are there twice too', () => {
    expect(headingNames(['Section', 'Hole', 'Hole', 'd0 2', 'n', 'Remark', null])).toEqual([
      ...['Section', 'Hole', 'Hole', 'Hole 2', 'Holes'],
      ...[undefined, undefined],
    ]);
  });
});
