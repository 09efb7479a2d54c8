import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { holeTitle } from '../../core/row/job/rowJob.js';
import { faceName } from '../../core/say/faceName.js';
import { noHolesSentence, placeOfHole } from '../../core/say/holesOfRowWords.js';
import { holesOfRow } from '../../core/setup/holesOfRow.js';
import { describeHole } from '../../core/tooling/hole.js';
import { textValue } from '../../core/working/namedValue.js';
import { shopArgument } from '../argument/shop.js';
import { rangeArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { oneRow } from '../row/oneRow.js';

const titles = ['Group', 'Face', 'x', 'y', 'Size', 'Read or given', 'How'];
const source = 'plane geometry; readings of what a row does not say are common practice, no source';

export const rowHoles = define({
  name: 'ROWHOLES',
  purpose: 'Every hole of a row of a parts list where it lies, given by the row or read',
  arguments: {
    headings: rangeArgument('The row of headings: Section, Length, Hole, End, Edge …'),
    row: rangeArgument('The row of the part, the same columns'),
    shop: shopArgument,
  },
  result: 'cells',
  gives:
    'A heading row, then for each hole its group, face, x and y in in or mm from the left end and the bottom edge or heel, size, and whether its place is given, read or not given, and how. One sentence where no hole can be laid out.',
  errors: '#VALUE! when the headings have no Section column or do not fit the row.',
  source,
  example:
    '=TONROW.ROWHOLES({"Section","Length","Hole","End","Edge"},{"PL1/2X10",12,"4 @ 13/16",2,2},ShopStamp)',
  compute({ headings, row, shop }, { unit }, working) {
    const { names, cells } = oneRow(headings, row);
    const found = holesOfRow(cells, readHeadings(names), shop);
    const holes = found.is === 'holes' ? found.holes : [];
    for (const known of ['given', 'read', 'not given'] as const) {
      const own = holes.filter((hole) => hole.known === known);
      working?.step({
        title: `Holes whose place is ${known}`,
        formula: 'n',
        values: [...new Set(own.map((hole) => placeOfHole(hole)))]
          .filter((how) => how !== '')
          .map((how) => textValue('how', 'how it was read', how)),
        result: { symbol: 'n', meaning: `holes whose place is ${known}`, kind: 'count', value: own.length },
        source,
      });
    }
    const why = found.is === 'holes' ? '' : noHolesSentence(found, unit);
    working?.step({
      title: 'Holes',
      formula: 'n',
      values: why === '' ? [] : [textValue('why', 'why none is laid out', why)],
      result: { symbol: 'n', meaning: 'holes of the row', kind: 'count', value: holes.length },
      source,
    });
    if (found.is !== 'holes') return [[why]];
    const size = (mm: number | undefined) => (mm === undefined ? '' : inShopUnit(mm, 'length', unit));
    const rows = holes.map((hole): CellValue[] => [
      holeTitle(hole.group),
      hole.faces.map((face) => faceName(face, found.section)).join(' or '),
      size(hole.xMm),
      size(hole.yMm),
      [describeHole(hole.hole, unit), ...(hole.direction ? [hole.direction] : [])].join(' '),
      hole.known,
      placeOfHole(hole),
    ]);
    return [titles, ...rows];
  },
});
