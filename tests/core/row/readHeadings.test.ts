import { describe, expect, it } from 'vitest';
import { groupFields, rowFields } from '../../../src/core/row/heading.js';
import { readHeadings } from '../../../src/core/row/readHeadings.js';
import { refusalText } from '../../support/refusal.js';

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
