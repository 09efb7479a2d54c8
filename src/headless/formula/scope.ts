import type { DefinedName, Sheet, Workbook } from '../../xlsx/workbook.js';
import type { Table } from '../../xlsx/tables.js';

/** Where names, tables and sheets are looked up. */
export interface Scope {
  sheets: { name: string }[];
  tables: Map<string, Table>;
  /** Defined names by lower-case name; a name may be defined once more for a sheet. */
  names: Map<string, DefinedName[]>;
  namespace: string;
  /** Our functions' names. */
  ours: ReadonlySet<string>;
}

/** The scope of a workbook's formulas. */
export function workbookScope(
  workbook: Pick<Workbook, 'tables' | 'names'> & { sheets: Pick<Sheet, 'name'>[] },
  namespace: string,
  ours: ReadonlySet<string>,
): Scope {
  return {
    sheets: workbook.sheets,
    tables: new Map(workbook.tables.map((table) => [table.name.toLowerCase(), table])),
    names: grouped(workbook.names),
    namespace,
    ours,
  };
}

/** The position of a sheet by name, -1 when there is none. */
export function sheetPosition(scope: Scope, name: string): number {
  const wanted = name.toLowerCase();
  return scope.sheets.findIndex((sheet) => sheet.name.toLowerCase() === wanted);
}

/** A defined name as a formula on the given sheet sees it: the sheet's own before the workbook's. */
export function findName(scope: Scope, name: string, sheet: number): DefinedName | undefined {
  const known = scope.names.get(name.toLowerCase()) ?? [];
  return known.find((one) => one.sheet === sheet) ?? known.find((one) => one.sheet === undefined);
}

function grouped(names: DefinedName[]): Map<string, DefinedName[]> {
  const groups = new Map<string, DefinedName[]>();
  for (const name of names) {
    const key = name.name.toLowerCase();
    groups.set(key, [...(groups.get(key) ?? []), name]);
  }
  return groups;
}
