import { cellKey } from '../../sheet/address.js';
import { type StoredValue, sameStored } from '../../sheet/cellValue.js';
import { makeCustomerCopy, shopSheets } from './customerCopy.js';
import { frozenFormulas, type FrozenFormula, neverCalculated } from './frozenSheet.js';
import { callsUs, refersToSpill } from '../../sheet/formula/ourCalls.js';
import { PackageParts } from '../packageParts.js';
import { calculatingSheets, keysOf, type LeftOut, leftOutColumns, stillTold } from './leaveOut.js';
import { makeShopCopy } from './shopCopy.js';
import { stillInCopy } from './stillInCopy.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { openWorkbook, type Sheet, type Workbook } from '../workbook.js';
import { portableCodec, type Codec } from '../zip/codec.js';

/*
 * Copies of a workbook for somebody without the add-in: our formulas become values, for the shop kept as a
 * list, for a customer gone with all that is private.
 */

/** For the shop's own people, whose formulas can come back; or for a customer, who gets values only. */
export type CopyKind = 'shop' | 'customer';

export interface ValuesCopy {
  bytes: Uint8Array;
  /** The formulas that became values. */
  formulas: number;
  /** Sheets, names and parts that are not in the copy. */
  sheets: string[];
  names: string[];
  parts: string[];
  /** What a reader of the copy may still find, one sentence each. */
  stays: string[];
  /** Columns of checks that are empty in the copy, as `Quote, Note`. */
  emptied: string[];
}

export interface CopyChoice {
  kind: CopyKind;
  codec?: Codec;
  /** Items of checks whose cells a customer's copy has empty: `note`, `minutes`. */
  leaveOut?: readonly string[];
}

/**
 * A copy of a workbook that shows the same numbers without the add-in.
 *
 * `shop`: our formulas, and those that read cells ours have spilled, become their values and are listed on a sheet of
 * their own, from which `bringFormulasBack` restores them. `customer`: every formula becomes its value; the sheets the
 * SHOP formula reads, defined names, table formulas, links to other files, the add-in's pane and texts that only the
 * removed sheets used are not in the copy.
 * Cells of checks that show what is to be left out are empty. PackageParts that need no change keep their bytes. Refuses a workbook with a formula that holds no value yet, and checks the
 * copy cell by cell before giving it.
 */
export function valuesCopy(
  bytes: Uint8Array,
  { kind, codec = portableCodec, leaveOut = [] }: CopyChoice,
): ValuesCopy {
  const workbook = openWorkbook(bytes, codec);
  const removed = kind === 'customer' ? shopSheets(workbook) : [];
  const kept = workbook.sheets.filter((sheet) => !removed.includes(sheet));
  const goes =
    kind === 'customer' ? () => true : (formula: string) => callsUs(formula) || refersToSpill(formula);
  refuseUncalculated(kept, goes);
  const formulas = kept.flatMap((sheet) => frozenFormulas(sheet, goes));
  const parts = new PackageParts(workbook.package);
  const left = kind === 'customer' ? leftOutColumns(kept, new Set(leaveOut)) : [];
  const names = kind === 'customer' ? makeCustomerCopy(parts, workbook, removed, left) : [];
  if (kind === 'shop') makeShopCopy(parts, workbook, formulas, goes);
  const copy = parts.toBytes();
  const reopened = openWorkbook(copy, codec);
  refuseDifferent(kept, reopened, formulas, goes, left);
  const told = stillTold(left, reopened.sheets);
  return {
    bytes: copy,
    formulas: formulas.length,
    sheets: removed.map(({ name }) => name),
    names,
    parts: [...parts.removed],
    emptied: left.map(({ sheet, heading }) => `${sheet}, ${heading}`),
    stays: [
      ...(left.length > 0 ? ['what other cells calculate from these columns'] : []),
      ...calculatingSheets(left, kept).map(
        (name) => `The sheet ${name} calculates from these columns: it may name presses and verdicts.`,
      ),
      ...(told.length > 0
        ? [`Texts of these columns stand in other cells too: ${told.slice(0, 5).join(', ')}.`]
        : []),
      ...stillInCopy(reopened),
    ],
  };
}

function refuseUncalculated(sheets: readonly Sheet[], goes: (formula: string) => boolean): void {
  const count = sheets.reduce((sum, sheet) => sum + neverCalculated(sheet, goes), 0);
  if (count > 0)
    refuseWorkbook(
      `${count} ${count === 1 ? 'formula has' : 'formulas have'} no value in the file: recalculate and save it first.`,
    );
}

/** The copy must hold the same values, and none of the formulas. */
function refuseDifferent(
  kept: readonly Sheet[],
  copy: Workbook,
  formulas: readonly FrozenFormula[],
  goes: (formula: string) => boolean,
  leftOut: readonly LeftOut[],
): void {
  for (const sheet of kept) {
    const empty = keysOf(leftOut, sheet.name);
    const { cells } = copy.sheets.find(({ name }) => name === sheet.name) ?? {};
    const values = (at: number): StoredValue => {
      const key = cellKey(sheet.cells?.rows[at] ?? 0, sheet.cells?.columns[at] ?? 0);
      return cells?.values[cells.index.get(key) ?? -1] ?? null;
    };
    const same = (sheet.cells?.values ?? []).every((value, at) => {
      const key = cellKey(sheet.cells?.rows[at] ?? 0, sheet.cells?.columns[at] ?? 0);
      return sameStored(empty.has(key) ? null : value, values(at));
    });
    const left = cells?.formulas.some((formula) => formula && goes(formula.text));
    if (!same || left)
      refuseWorkbook(
        `The copy was not made: the sheet ${JSON.stringify(sheet.name)} did not come out the same. ${formulas.length} formulas were to become values.`,
      );
  }
}
