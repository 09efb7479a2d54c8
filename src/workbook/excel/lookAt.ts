import { type Area, cellAddress, readAddresses, sameArea } from '../area.js';
import type { DefinedName, Sheet, Table } from '../reading.js';
import type { AllSeen, CellState, Look } from '../writeHost.js';
import { decodeContents } from './decodeCells.js';
import { refuseMissing } from './missing.js';
import type { RoundTrips } from './roundTrips.js';

/** Answers all questions in one round trip. */
export async function lookAt<const L extends readonly Look[]>(
  looks: L,
  trips: RoundTrips,
): Promise<AllSeen<L>> {
  return refuseMissing(looks, trips, () =>
    trips.run(async ({ workbook }, sync) => {
      const answers = looks.map((look) => ask(look, workbook));
      await sync();
      return answers.map((answer) => answer()) as AllSeen<L>;
    }),
  );
}

type Answer = () => unknown;

function ask(look: Look, workbook: Excel.Workbook): Answer {
  switch (look.look) {
    case 'cells': {
      const range = workbook.worksheets.getItem(look.area.sheet).getRange(cellAddress(look.area));
      loadState(range);
      return () => stateOf(range);
    }
    case 'used': {
      const range = workbook.worksheets.getItem(look.sheet).getUsedRangeOrNullObject(true);
      loadState(range).load('address');
      return () => usedState(range, look.sheet);
    }
    case 'merged': {
      const range = workbook.worksheets.getItem(look.area.sheet).getRange(cellAddress(look.area));
      const merged = range.getMergedAreasOrNullObject().load('address');
      loadState(range).load('format/horizontalAlignment');
      return () => ({
        ...stateOf(range),
        isMerged: !merged.isNullObject && isOnly(look.area, readAddresses(merged.address, look.area.sheet)),
        isCentered: range.format.horizontalAlignment === 'Center',
      });
    }
    case 'sheet':
      return askSheet(workbook.worksheets.getItemOrNullObject(look.name));
    case 'table':
      return askTable(workbook.tables.getItem(look.name));
    case 'is table': {
      const table = workbook.tables.getItemOrNullObject(look.name).load('name');
      return () => !table.isNullObject;
    }
    case 'name': {
      const name = workbook.names.getItemOrNullObject(look.name).load('name,formula');
      return (): DefinedName | undefined =>
        name.isNullObject ? undefined : { name: name.name, refersTo: String(name.formula) };
    }
  }
}

function isOnly(area: Area, [first, ...others]: readonly Area[]): boolean {
  return first !== undefined && others.length === 0 && sameArea(first, area);
}

export function loadState(range: Excel.Range): Excel.Range {
  return range.load('values,formulas,valueTypes,numberFormat');
}

export function stateOf(range: Excel.Range): CellState {
  return {
    contents: decodeContents(range.values, range.formulas, range.valueTypes),
    formats: range.numberFormat.map((row) => row.map(String)),
  };
}

function usedState(range: Excel.Range, sheet: string) {
  if (range.isNullObject)
    return { area: { sheet, row: 0, column: 0, rows: 0, columns: 0 }, contents: [], formats: [] };
  return { area: readAddresses(range.address, sheet)[0], ...stateOf(range) };
}

function askSheet(sheet: Excel.Worksheet): () => Sheet | undefined {
  sheet.load('name,visibility,protection/protected');
  return () =>
    sheet.isNullObject
      ? undefined
      : {
          name: sheet.name,
          visible: sheet.visibility === 'Visible',
          protected: sheet.protection.protected,
        };
}

export function askTable(table: Excel.Table): () => Table {
  table.load('name,showTotals,worksheet/name');
  const range = table.getRange().load('address');
  // The names of the columns, which a table without a heading row has too.
  const columns = table.columns.load('items/name');
  return () => {
    const [area] = readAddresses(range.address, table.worksheet.name);
    return {
      name: table.name,
      area: area as NonNullable<typeof area>,
      headings: columns.items.map((column) => column.name),
      hasTotals: table.showTotals,
    };
  };
}
