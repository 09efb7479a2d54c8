// A column that is not read and may hold work leaves its row open: nothing of a drawing is dropped in silence.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupFields, rowFields } from '../../../../src/core/row/headings/heading.js';
import { headingNames } from '../../../../src/core/row/headings/readHeadings.js';
import { isSlip } from '../../../../src/core/row/headings/unreadWork.js';
import { checkedRow, type Row } from '../../../support/checkedRow.js';
import { shopWith } from '../../../support/sampleShop.js';

const shop = shopWith();
const flat: Row = { Mark: 'F1', Qty: 2, Section: 'FB3/8X6', Grade: 'A36', Length: 12, Press: 'Bay A' };
const verdict = (row: Row) => checkedRow(row, shop).verdict;
const note = (row: Row) => checkedRow(row, shop).note;

const ofWork = [...rowFields, ...groupFields].filter(
  ({ key, name }) => !['mark', 'drawing', 'revision', 'section', 'grade'].includes(key) && name.length > 2,
);

/** A heading with one slip of the keys. */
const slip = fc
  .tuple(
    fc.constantFrom(...ofWork.map(({ name }) => name)),
    fc.nat(),
    fc.constantFrom('out', 'twice', 'swapped'),
  )
  .map(([name, seed, what]) => {
    // A short name is known by its first letter, and one of three letters by all of them.
    const least = name.length < 5 ? 1 : 0;
    const at = least + (seed % (name.length - 1 - least));
    const [first, second] = [name[at] ?? '', name[at + 1] ?? ''];
    if (what === 'out' && name.length > 3) return name.slice(0, at) + second + name.slice(at + 2);
    if (what === 'twice') return name.slice(0, at) + first + first + second + name.slice(at + 2);
    return name.slice(0, at) + second + first + name.slice(at + 2);
  })
  .filter((heading) => headingNames([heading])[0] === undefined && heading.trim() === heading);

describe('a column that is not read', () => {
  it('leaves its row open where its heading is a slip of one that is read', () => {
    expect(verdict(flat)).toBe('OK');
    fc.assert(
      fc.property(slip, fc.constantFrom<string | number>(3, 60, '45', 'x'), (heading, cell) => {
        expect(isSlip(heading), heading).toBe(true);
        expect(verdict({ ...flat, [heading]: cell }), heading).toBe('OK so far');
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    'Left angle',
    'Angle L',
    'Ø',
    'Ø mm',
    'Dia',
    'Cut',
    'Corner cut',
    'Schnittwinkel',
    'Winkel links',
    ...['LH', 'RH', 'Camber', 'MTR', 'Roll', 'Flange', 'X', 'Y1', 'Deg', 'O.C.', 'Tapped'],
    ...['Bev L', 'Ang R', 'L end', 'End A', 'Prep', 'Hem', 'Formed', 'Brake', '°', 'Machining'],
    ...[
      'A',
      'H1',
      'Dim B',
      'Setback',
      'Return',
      'Pin',
      'G1',
      'Edge L',
      'Distance',
      'C-C',
      'Wall',
      'OD',
      'Ga',
    ],
    ...['Rows', 'No of rows', 'Qty per', 'Spares', 'Extra'],
  ])('leaves its row open with a number below %s', (heading) => {
    expect(verdict({ ...flat, [heading]: 45 })).toBe('OK so far');
    expect(note({ ...flat, [heading]: '45' })).toContain(
      `${heading} is filled in and not read. Rename the column, or clear it.`,
    );
    expect(verdict({ ...flat, [heading]: null })).toBe('OK');
    expect(verdict({ ...flat, [heading]: 'done' })).toBe('OK');
  });

  it.each([
    ...[
      'Weight',
      'Color',
      'Lot',
      'Phase',
      'Page',
      'Sheet',
      'Status',
      'Location',
      'Bundle',
      'Heat no',
      'Price',
    ],
    ...[
      'Cost each',
      'Ship date',
      'Cut list',
      'Cut date',
      'Cutting time',
      'Hours',
      'Area',
      'Note',
      'Line',
      'Zone',
      'USD',
      'Year',
      'Max',
      'Pos no',
    ],
    ...['Sq ft', 'lb/ft', 'Lin ft', 'Op', 'Type', 'Code', 'Detail', 'Run', 'Sheets', 'Bolt qty', 'Key', 'ID'],
  ])('changes nothing below %s', (heading) => {
    expect(verdict({ ...flat, [heading]: 45 })).toBe('OK');
  });

  it.each(['Countersink', 'CSK', 'Tap', 'Camber', 'Fold', 'Chamfer', 'Brake', 'Machining'])(
    'leaves its row open with a tick below %s',
    (heading) => {
      for (const tick of ['yes', 'x', 'Y', '✓', 'ja', true])
        expect(verdict({ ...flat, [heading]: tick }), String(tick)).toBe('OK so far');
      for (const none of ['no', 'none', '-', 'n/a', null, 0])
        expect(verdict({ ...flat, [heading]: none })).toBe('OK');
    },
  );

  it('changes nothing where a size is one that the row gives', () => {
    for (const heading of ['A', 'Dim B', 'Distance', 'Wall'])
      expect(verdict({ ...flat, [heading]: 6 })).toBe('OK');
    expect(verdict({ ...flat, Wall: '3/8' })).toBe('OK');
  });

  it('leaves its row open below a short slip', () => {
    for (const heading of ['Bolts', 'Slt', 'Egde', 'Gge', 'Hoel', 'Qtty', 'Legg'])
      expect(verdict({ ...flat, [heading]: 4 }), heading).toBe('OK so far');
  });

  it('leaves its row open without a heading between those that are read, with a number or a size', () => {
    const merged = (cell: Row[string]) => ({
      ...flat,
      Press: null,
      'Miter left': null,
      ' ': cell,
      Leg: null,
    });
    expect(verdict(merged(null))).toBe('OK');
    expect(verdict(merged(60))).toBe('OK so far');
    expect(note(merged('13/16'))).toContain('A column without a heading is filled in and not read.');
    expect(verdict(merged('see sketch'))).toBe('OK');
  });

  it('leaves its row open where it means what another column says, and says something else', () => {
    expect(verdict({ ...flat, 'Cut length': 12 })).toBe('OK');
    expect(verdict({ ...flat, 'Cut length': "42'" })).toBe('OK so far');
    expect(note({ 'Cut length': 500, ...flat })).toContain('Cut length is filled in and not read.');
    expect(verdict({ ...flat, Material: 'steel' })).toBe('OK');
  });
});
