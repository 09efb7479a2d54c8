import type { Model, UID } from '@odoo/o-spreadsheet';

/** The cells that each color rule is about. */
export type RuleRanges = ReadonlyMap<string, readonly string[]>;

/** What the grid knows a rule of the file by: its place among the rules with a formula. */
export const ruleId = (at: number): string => `color${at + 1}`;

export const ruleRanges = ({ getters }: Model, sheetId: UID): RuleRanges =>
  new Map(getters.getConditionalFormats(sheetId).map(({ id, ranges }) => [id, ranges]));
