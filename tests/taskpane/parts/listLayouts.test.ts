import { describe, expect, it } from 'vitest';
import { formatLength } from '../../../src/core/quantity/formatLength.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../src/core/row/readRow.js';
import { describeHole } from '../../../src/core/tooling/hole.js';
import { headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { headingsProblem } from '../../../src/taskpane/parts/list/headingsProblem.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { unreadSizes, unreadSizesSentence } from '../../../src/taskpane/parts/list/unreadSizes.js';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import { type ListLayout, listLayouts } from './listLayouts.js';

function matched({ cells, unit }: ListLayout) {
  const shop = starterShop(unit);
  const values = cells.split('\n').map((line) => line.trim().split('|'));
  const area = { sheet: 'Sheet1', row: 0, column: 0, rows: values.length, columns: values[0]?.length ?? 0 };
  const source = { key: 'cells', title: 'Cells', area };
  const list = listFrom(source, area, values, headingRowOf(values));
  return { shop, list, matches: matchColumns(list.headings, list.rows, shop, list.written) };
}

describe('lists as fabricators send them', () => {
  it('are thirty or more, each with a name of its own', () => {
    expect(listLayouts.length).toBeGreaterThanOrEqual(30);
    expect(new Set(listLayouts.map(({ name }) => name)).size).toBe(listLayouts.length);
  });

  it.each(listLayouts)('$name: every column is read, asked about or named', (layout) => {
    const { shop, list, matches } = matched(layout);
    const named = unreadSizes(matches, list.rows, shop.unit).map(({ at }) => at);
    const columns = matches.map(({ at, field, guessed }) =>
      field === undefined ? (named.includes(at) ? '!' : '-') : `${field}${guessed ? '?' : ''}`,
    );
    expect(columns.join('|')).toBe(layout.columns);
  });

  it.each(listLayouts)('$name: the first part is read as it is meant', (layout) => {
    const { shop, list, matches } = matched(layout);
    const problem = headingsProblem(matches, 0);
    if (layout.first === 'asked') return expect(problem).toContain('are both read as');
    expect(problem).toBeUndefined();
    const job = readRow(list.rows[0] ?? [], readHeadings(headingsOf(matches)), shop);
    expect(job.problems).toEqual([]);
    const holes = job.groups.map(({ hole, count }) => `${count} × ${describeHole(hole, shop.unit)}`);
    const length =
      job.lengthMm === undefined ? [] : [`${formatLength(job.lengthMm, shop.unit)} ${shop.unit} long`];
    const said = [job.section?.designation, job.grade?.name, ...holes, ...length].join(', ');
    expect(said.startsWith(layout.first), said).toBe(true);
  });

  it('a column of sizes that is not read is named in a sentence', () => {
    const layout = listLayouts.find(({ columns }) => columns.includes('!'));
    if (!layout) throw new Error('no such layout');
    const { shop, list, matches } = matched(layout);
    expect(unreadSizesSentence(unreadSizes(matches, list.rows, shop.unit), 1)).toBe(
      'Column F (Fastener) holds sizes and is not read, so nothing in it is checked. Say above what it is.',
    );
    expect(unreadSizesSentence([], 0)).toBeUndefined();
  });
});
