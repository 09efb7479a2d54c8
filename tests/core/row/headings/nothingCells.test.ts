// Words that say that there is none of something: a blank cell where that turns nothing off that the word would ask for.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkRow } from '../../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { checkedRow, type Row } from '../../../support/checkedRow.js';
import { shopWith } from '../../../support/sampleShop.js';
import { type Cells, wholeRow } from '../support/randomRow.js';

const shop = shopWith({}, {});
const dashes = ['-', '–', '—', '--', './.', '-/-', ' - '];
const notApplicable = ['n/a', 'N/A', 'n.a.', 'entfällt', 'n.v.t.'];
const none = ['none', 'None', 'NONE', 'nil', 'no', 'keine', 'ohne', 'geen', 'nee', 'aucun', 'ninguno'];
const every = [...dashes, ...notApplicable, ...none];

const bare: Row = { Section: 'PL3/8X6', Grade: 'A36', Length: 12, Press: 'Bay A' };
const holed: Row = { ...bare, Hole: '13/16', Holes: 2, Bolt: '3/4', Edge: 3, End: 2, Pitch: 3 };
const said = (row: Row) => {
  const { findings, readings, verdict } = checkedRow(row, shop);
  return { findings, readings, verdict };
};

describe('a word that there is none', () => {
  it.each([
    ['Hole', bare, every],
    ['Holes', bare, every],
    ['Bolt', bare, every],
    ['Miter left', bare, [...every, 'square', 'SQ', 'gerade', 'haaks']],
    ['Miter right', bare, every],
    ['Corner clip', bare, every],
    ['Corners', bare, every],
    ['Notch width', bare, every],
    ['Notch depth', bare, every],
    ['Notches', bare, every],
    ['Notch at', bare, every],
    ['Clip at', bare, every],
    ['Bend length', bare, every],
    ['Bends', bare, every],
    ['Bend at', bare, every],
    ['Finish', bare, every],
    ['Edge', holed, every],
    ['End', holed, every],
    ['Pitch', holed, every],
    ['Gage', holed, every],
    ['Leg', { ...holed, Section: 'L4X3X1/4' }, every],
    ['Slot', holed, every],
    ['Holes at', holed, every],
    ['Length', holed, [...dashes, ...notApplicable]],
    ['Edge kind', holed, [...dashes, ...notApplicable]],
    ['End kind', holed, [...dashes, ...notApplicable]],
    ['Bolt', holed, dashes],
    ['Holes', holed, dashes],
    ['Press', holed, dashes],
    ['Cut by', holed, dashes],
    ['Holes by', holed, dashes],
  ])('under %s is a blank cell', (heading, row, words) => {
    const blank = said({ ...row, [heading]: null });
    for (const word of words) expect(said({ ...row, [heading]: word }), word).toEqual(blank);
  });

  it.each([
    ['Qty', holed, every],
    ['Section', holed, every],
    ['Grade', holed, every],
    ['Holes', holed, none],
    ['Hole', holed, none],
    ['Corners', { ...bare, 'Corner clip': 1 }, none],
    ['Bends', { ...bare, 'Bend length': 1 }, none],
    ['Slot', { ...holed, Hole: '13/16x1-7/8' }, none],
    ['Edge kind', holed, none],
    ['Cut by', holed, [...none, ...notApplicable]],
    ['Press', holed, [...none, ...notApplicable]],
  ])(
    'under %s is refused, where there cannot be none or another cell contradicts it',
    (heading, row, words) => {
      for (const word of words)
        expect(['Check input', 'No press'], `${heading} ${word}`).toContain(
          said({ ...row, [heading]: word }).verdict,
        );
    },
  );

  it('says of a bolt that it is no bolt hole, and the note tells', () => {
    for (const word of ['none', 'keine', 'geen', 'n/a', 'no bolt'])
      expect(checkedRow({ ...holed, Bolt: word }, shop).note, word).toContain(
        'no bolt, so the distances were checked by press practice only',
      );
  });

  it('under the columns of a plate leaves the section to say its sizes', () => {
    const row = { ...holed, Thickness: '-', Width: '—' };
    expect(said(row)).toEqual(said(holed));
  });

  it('makes a row of nothing but dashes below its mark blank', () => {
    const cells = { Mark: null, Section: null, Grade: null, Hole: '-', Edge: '-', Press: '-' };
    expect(checkRow(Object.values(cells), readHeadings(Object.keys(cells)), shop)).toEqual({ blank: true });
  });

  it('is no tick: a cross may say yes or no', () => {
    for (const cross of ['x', 'X', '✓', '×'])
      expect(checkedRow({ ...holed, 'Miter left': cross }, shop).note).toContain(
        `Miter left: '${cross}' may be a tick, or say that there is none. Write what is meant, or clear the cell.`,
      );
  });

  it('is never read as anything but a blank cell', () => {
    fc.assert(
      fc.property(wholeRow, fc.nat(), fc.constantFrom(...every), ({ given, places }, at, word) => {
        const cells: Cells = { ...given, ...places };
        const headings = Object.keys(cells);
        const heading = headings[at % headings.length] ?? 'Hole';
        const [worded, blank] = [word, null].map((cell) => said({ ...cells, [heading]: cell }));
        if (worded?.verdict === 'Check input' || worded?.verdict === 'No press') return;
        if (heading.startsWith('Bolt') && !dashes.includes(word)) return;
        expect(worded, `${heading} ${word}`).toEqual(blank);
      }),
      { numRuns: 300 },
    );
  });
});
