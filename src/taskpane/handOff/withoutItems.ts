import { columnNumber } from '../../sheet/address.js';
import { shownItems } from '../../xlsx/freeze/leaveOut.js';
import { lookUp } from '../parts/list/sheetChecks.js';
import type { FoundFormula } from '../shared/formulaList.js';

/** Formulas with what they show, but for items that a copy leaves out: those cells become blank. */
export function withoutItems(formulas: readonly FoundFormula[], items: ReadonlySet<string>): FoundFormula[] {
  const lists = new Map<string, Set<number>>();
  const emptied = formulas.map((found): FoundFormula => {
    const { area, formula, values } = found;
    const asked = shownItems(formula.replace(/^=/, ''));
    if (!asked) return found;
    const isLeft = asked.map((item) => items.has(item));
    if (area.rows > 1) {
      const columns = isLeft.flatMap((left, at) => (left ? area.column + at : []));
      lists.set(keyOf(area.sheet), new Set(columns));
    }
    return { ...found, values: values.map((row) => row.map((value, at) => (isLeft[at] ? null : value))) };
  });
  return emptied.map((found) => {
    const [, quotedSheet, sheet = quotedSheet?.replaceAll("''", "'") ?? '', letter = ''] =
      lookUp.exec(found.formula) ?? [];
    const isLeft = letter !== '' && lists.get(keyOf(sheet))?.has(columnNumber(letter)) === true;
    return isLeft ? { ...found, values: found.values.map((row) => row.map(() => null)) } : found;
  });
}

const keyOf = (sheet: string) => sheet.toLowerCase();
