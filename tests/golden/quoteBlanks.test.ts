// A blank cell reaches a function as null, as empty text, as 0 or as a data type of its own, by host and version. The
// example must come out the same in every form, and also where each blank cell of its tables really holds a 0.
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type CellValue, type InputChange, readSheetValues } from '../../src/headless/index.js';
import { cellAddress } from '../../src/sheet/address.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { type Quote, recalculatedQuote, workbookFile } from './quote.js';

const original = new Uint8Array(readFileSync(workbookFile));
const entity = { type: 'Empty', basicType: 'Empty', basicValue: '' } as const;

/** A 0 for each blank cell of the tables' data that holds no formula; a formula of the sheet's own repeats the marks. */
function zeros(): InputChange[] {
  const { sheets, tables } = openWorkbook(original);
  return tables.flatMap(({ sheet, zone, columns }) => {
    const { name, cells } = sheets[sheet] ?? {};
    if (!name || !cells) return [];
    const changes: InputChange[] = [];
    for (let row = zone.top + 1; row <= zone.bottom; row += 1)
      for (let column = zone.left; column <= zone.right; column += 1) {
        const at = cells.index.get(row * 16_384 + column) ?? -1;
        const blank = (cells.values[at] ?? null) === null && !cells.formulas[at];
        if (blank && columns[column - zone.left] !== 'Mark')
          changes.push({ sheet: name, cell: cellAddress(row, column), value: 0 });
      }
    return changes;
  });
}

const sheetNames = ['Quote', 'Summary', 'List check'];

/** Everything the sheets show, a 0 that was put in as the blank it stands for. */
function shownOf({ bytes }: Quote, put: readonly InputChange[] = []): CellValue[][][] {
  const places = new Set(put.map(({ sheet, cell }) => `${sheet}!${cell}`));
  return sheetNames.map((sheet) =>
    readSheetValues(bytes, sheet).map((row, at) =>
      row.map((value, column) => (places.has(`${sheet}!${cellAddress(at, column)}`) ? null : value)),
    ),
  );
}

const stampOf = ({ bytes }: Quote) => readSheetValues(bytes, 'Shop')[3]?.[1];

describe('the example quote', () => {
  let plain: Quote;
  beforeAll(async () => {
    plain = await recalculatedQuote();
  });

  it.each([['empty text', ''] as const, ['0', 0] as const, ['a data type', entity] as const])(
    'comes out the same where a blank cell arrives as %s',
    async (_, blank) => {
      const other = await recalculatedQuote([], blank);
      expect(stampOf(other)).toBe(stampOf(plain));
      expect(shownOf(other)).toEqual(shownOf(plain));
    },
  );

  it('comes out the same with every blank cell of its tables filled with 0', async () => {
    const changes = zeros();
    expect(changes.length).toBeGreaterThan(300);
    const other = await recalculatedQuote(changes);
    expect(stampOf(other)).toBe(stampOf(plain));
    expect(shownOf(other, changes)).toEqual(shownOf(plain));
  });
});
