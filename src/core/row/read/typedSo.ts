import type { CellValue } from '../../quantity/cellValue.js';
import type { LengthUnit } from '../../quantity/units.js';
import { describeHole, type Hole } from '../../tooling/hole.js';

/**
 * Whether a cell already says its hole as it is shown, with or without its count: `4 @ 13/16`, `13/16"`, `4Ø18`. Only
 * the numbers count, in their order.
 */
export function saysHole(cell: CellValue, hole: Hole, count: number, unit: LengthUnit): boolean {
  const typed = numbersIn(String(cell ?? ''));
  const shown = numbersIn(describeHole(hole, unit)).join(' ');
  return [
    typed,
    ...(typed[0] === String(count) ? [typed.slice(1)] : []),
    ...(typed.at(-1) === String(count) ? [typed.slice(0, -1)] : []),
  ].some((numbers) => numbers.join(' ') === shown);
}

const numbersIn = (text: string): string[] => text.match(/\d[\d./-]*/g) ?? [];
