import { isError } from './errors.js';

/** The function that stands for a formula this page does not calculate: its text, and the value it had. */
export const keptFunction = 'KEPT';

/** Whether the engine's form of a formula is one that keeps its value. */
export const isKeptFormula = ({ symbols }: { symbols: readonly string[] }): boolean =>
  symbols[0] === keptFunction;

export type KeptValue = number | string | boolean | { error: string } | null;

/** The formula the grid gets in place of one that keeps its value. */
export function keptFormula(formula: string, value: KeptValue): string {
  return `=${keptFunction}(${engineText(formula.replaceAll('"', '”'))},${engineLiteral(value)})`;
}

function engineLiteral(value: KeptValue): string {
  if (value === null) return '""';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return engineText(typeof value === 'string' ? value : value.error);
}

/** A text in a formula: the engine has no way to write a quotation mark or a last backslash inside one. */
export function engineText(text: string): string {
  const pieces = text.split(/(["\\\n])/).filter((piece) => piece !== '');
  if (pieces.length === 0) return '""';
  const written = pieces.map((piece) =>
    /^["\\\n]$/.test(piece) ? `CHAR(${piece.charCodeAt(0)})` : `"${piece}"`,
  );
  return written.length === 1 ? (written[0] as string) : `CONCATENATE(${written.join(',')})`;
}

export const keptDescription = {
  description: 'A formula that is not calculated on this page, with the value the file has for it',
  category: 'Kept',
  args: [
    { name: 'formula', description: 'The formula in the file', type: ['STRING'] },
    { name: 'value', description: 'Its value in the file', type: ['ANY'], acceptErrors: true },
  ],
  compute: (_formula: unknown, value: { value: unknown } | undefined) =>
    isError(value?.value)
      ? {
          value: value.value,
          message: 'This error is the one in the file: the formula is not calculated here.',
        }
      : { value: value?.value ?? null },
};
