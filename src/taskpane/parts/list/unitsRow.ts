import { isBlank, type CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { isUnitWord } from '../../../core/row/rowKind.js';

/** Whether a row says units and nothing else: `(in)` below Length. */
export function isUnitsRow(row: readonly CellValue[] | undefined): boolean {
  const filled = row?.filter((cell) => !isBlank(cell)) ?? [];
  return filled.length > 0 && filled.every((cell) => typeof cell === 'string' && isUnitWord(cell));
}

const lengthUnits: Readonly<Record<string, string>> = {
  ...{ mm: 'mm', cm: 'cm', m: 'm', in: 'in', inch: 'in', inches: 'in', ft: 'ft', feet: 'ft' },
  ...{ '"': 'in', '″': 'in', "'": 'ft', '′': 'ft' },
};

/** The unit that a row of units says of a column, to be told in its heading; undefined where the shop has it anyway. */
export function unitToTell(cell: CellValue | undefined, unit: LengthUnit): string | undefined {
  const said =
    lengthUnits[
      String(cell ?? '')
        .toLowerCase()
        .replaceAll(/[\s()[\].]/g, '')
    ];
  return said === unit ? undefined : said;
}
