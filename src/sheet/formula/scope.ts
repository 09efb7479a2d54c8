import { sameName } from '../names.js';
import type { Table } from '../table.js';

export interface DefinedName {
  name: string;
  /** What it stands for, without the equals sign. */
  text: string;
  /** Position of the only sheet it is known on, if it is not known everywhere. */
  sheet: number | undefined;
}

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
  workbook: { sheets: { name: string }[]; tables: readonly Table[]; names: readonly DefinedName[] },
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
  return scope.sheets.findIndex((sheet) => sameName(sheet.name, name));
}

/** A defined name as a formula on the given sheet sees it: the sheet's own before the workbook's. */
export function findName(scope: Scope, name: string, sheet: number): DefinedName | undefined {
  const known = scope.names.get(name.toLowerCase()) ?? [];
  return known.find((one) => one.sheet === sheet) ?? known.find((one) => one.sheet === undefined);
}

function grouped(names: readonly DefinedName[]): Map<string, DefinedName[]> {
  const groups = new Map<string, DefinedName[]>();
  for (const name of names) {
    const key = name.name.toLowerCase();
    groups.set(key, [...(groups.get(key) ?? []), name]);
  }
  return groups;
}
