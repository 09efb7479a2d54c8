import type { CellValue } from '../core/quantity/cellValue.js';

/** A formula is always said to be one; text never is, whatever it begins with. */
export interface Formula {
  formula: string;
}

/** An error that stands in a cell as a constant: `#N/A` pasted as a value. */
export interface ErrorConstant {
  error: string;
}

/** What a cell holds: a constant, null for a blank cell, or a formula. */
export type Content = CellValue | Formula | ErrorConstant;

/** Rows of cells to write; undefined leaves a cell as it is. */
export type Contents = readonly (readonly (Content | undefined)[])[];

export function isFormula(content: unknown): content is Formula {
  return typeof content === 'object' && content !== null && 'formula' in content;
}

export function isErrorConstant(content: unknown): content is ErrorConstant {
  return typeof content === 'object' && content !== null && 'error' in content;
}

export function sameContent(a: Content, b: Content): boolean {
  if (isFormula(a)) return isFormula(b) && a.formula === b.formula;
  if (isErrorConstant(a)) return isErrorConstant(b) && a.error === b.error;
  return a === b || (isBlank(a) && isBlank(b));
}

function isBlank(content: Content): boolean {
  return content === null || content === '';
}
