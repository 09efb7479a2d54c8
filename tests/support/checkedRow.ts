// One row checked against a shop, with its sentences beside its data.
import type { Finding } from '../../src/core/check/finding.js';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { checkRow } from '../../src/core/row/checkRow.js';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import type { CheckedRow } from '../../src/core/row/rowResult.js';
import { noteOf } from '../../src/core/say/noteOf.js';
import { openText } from '../../src/core/say/openText.js';
import { governs, say } from '../../src/core/say/say.js';
import type { Shop } from '../../src/core/shop/readShop.js';
import { type Step, Working } from '../../src/core/working/working.js';

/** The cells of a row by their headings. */
export type Row = Record<string, CellValue>;

export interface ToldRow extends Omit<CheckedRow, 'route'> {
  note: string;
  /** What is not checked for certain. */
  open: string;
  governs: string;
  route: string;
}

/** Checks a row; throws for one that is blank. */
export function checkedRow(row: Row, shop: Shop, working?: Working): ToldRow {
  const result = checkRow(Object.values(row), readHeadings(Object.keys(row)), shop, working);
  if (result.blank) throw new Error('the row is blank');
  const { unit } = shop;
  return {
    ...result,
    note: noteOf(result, unit),
    open: openText(result, unit),
    governs: result.deciding ? governs(result.deciding, unit) : '',
    route: result.route.join(', '),
  };
}

/** The steps of the working of a row. */
export function stepsOf(row: Row, shop: Shop): readonly Step[] {
  const working = new Working();
  checkedRow(row, shop, working);
  return working.steps;
}

/** What each finding is about, in their order. */
export function governsEach(findings: readonly Finding[], { unit }: Shop): string[] {
  return findings.map((finding) => governs(finding, unit));
}

/** What each finding says, in their order; empty for what is held. */
export function sayEach(findings: readonly Finding[], { unit }: Shop): string[] {
  return findings.map((finding) => say(finding, unit));
}
