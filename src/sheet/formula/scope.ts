import { sameName } from '../names.js';
import type { Table } from '../table.js';
import { FormulaSyntaxError } from './tokens.js';

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
  /** Defined names by lower-case name, then by their sheet; undefined for one that is known everywhere. */
  names: Map<string, Map<number | undefined, DefinedName>>;
  namespace: string;
  /** Our functions' names. */
  ours: ReadonlySet<string>;
  /** What is left of the work that reading formulas may take; without one, there is no end to it. */
  work?: { left: number };
}

/** Characters of names and shared formulas that are read for a workbook, whatever it holds. */
const leastWork = 2_000_000;
/** The same for each character of its sheets: shared formulas are a few characters each where they are stored. */
const workPerCharacter = 8;

export const newWork = (characters = 0): { left: number } => ({
  left: leastWork + workPerCharacter * characters,
});

/** Refuses the formula that is read where a workbook asks for more than any honest one. */
export function spendWork({ work }: Scope, amount: number): void {
  if (work && (work.left -= amount) < 0)
    throw new FormulaSyntaxError(
      'The names and formulas of this workbook multiply beyond what is read here.',
    );
}

interface SheetToRead {
  name: string;
  cells?: { xml: string } | undefined;
}

/** The scope of a workbook's formulas. */
export function workbookScope(
  workbook: { sheets: SheetToRead[]; tables: readonly Table[]; names: readonly DefinedName[] },
  namespace: string,
  ours: ReadonlySet<string>,
): Scope {
  return {
    sheets: workbook.sheets,
    tables: new Map(workbook.tables.map((table) => [table.name.toLowerCase(), table])),
    names: namesBySheet(workbook.names),
    namespace,
    ours,
    work: newWork(workbook.sheets.reduce((sum, { cells }) => sum + (cells?.xml.length ?? 0), 0)),
  };
}

const positions = new WeakMap<Scope['sheets'], Map<string, number>>();

/** The position of a sheet by name, -1 when there is none. */
export function sheetPosition(scope: Scope, name: string): number {
  const { sheets } = scope;
  const known = positions.get(sheets) ?? new Map<string, number>();
  positions.set(sheets, known);
  const at = known.get(name.toLowerCase());
  if (at !== undefined && sameName(sheets[at]?.name ?? '', name)) return at;
  spendWork(scope, sheets.length);
  const found = sheets.findIndex((sheet) => sameName(sheet.name, name));
  if (found >= 0) known.set(name.toLowerCase(), found);
  return found;
}

/** A defined name as a formula on the given sheet sees it: the sheet's own before the workbook's. */
export function findName(scope: Scope, name: string, sheet: number): DefinedName | undefined {
  const known = scope.names.get(name.toLowerCase());
  return known?.get(sheet) ?? known?.get(undefined);
}

/** Names as a scope keeps them; of two for the same place, the first counts. */
export function namesBySheet(names: readonly DefinedName[]): Scope['names'] {
  const groups: Scope['names'] = new Map();
  for (const name of names) {
    const key = name.name.toLowerCase();
    const group = groups.get(key) ?? new Map<number | undefined, DefinedName>();
    groups.set(key, group);
    if (!group.has(name.sheet)) group.set(name.sheet, name);
  }
  return groups;
}
