import type { CellValue } from '../../core/quantity/cellValue.js';
import type { Content } from '../content.js';

/** Values of a range as the host gives them, which has "" for a blank cell. */
export function decodeValues(values: readonly (readonly unknown[])[]): CellValue[][] {
  return values.map((row) => row.map(decodeValue));
}

function decodeValue(value: unknown): CellValue {
  if (value === '' || value === null || value === undefined) return null;
  return typeof value === 'number' || typeof value === 'boolean' ? value : String(value);
}

/** The formulas of a range. Text that looks like a formula is its own value; no formula is. */
export function decodeFormulas(
  formulas: readonly (readonly unknown[])[],
  values: readonly (readonly unknown[])[],
): (string | null)[][] {
  return formulas.map((row, at) =>
    row.map((formula, column) => {
      const isFormula =
        typeof formula === 'string' && formula.startsWith('=') && formula !== values[at]?.[column];
      return isFormula ? formula : null;
    }),
  );
}

/** Constants, error constants and formulas of a range. */
export function decodeContents(
  values: readonly (readonly unknown[])[],
  formulas: readonly (readonly unknown[])[],
  types: readonly (readonly string[])[],
): Content[][] {
  const decoded = decodeFormulas(formulas, values);
  return decodeValues(values).map((row, at) =>
    row.map((value, column) => {
      const formula = decoded[at]?.[column];
      if (typeof formula === 'string') return { formula };
      return types[at]?.[column] === 'Error' ? { error: String(value) } : value;
    }),
  );
}
