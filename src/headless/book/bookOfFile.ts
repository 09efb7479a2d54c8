import type { Book } from '../../print/shopOfBook.js';
import { cellKey, parseZone, type Zone } from '../../sheet/address.js';
import { type CellValue, isCellError } from '../../sheet/cellValue.js';
import { moveFormula } from '../../sheet/formula/moveFormula.js';
import { findName, type Scope, sheetPosition } from '../../sheet/formula/scope.js';
import type { Table } from '../../sheet/table.js';
import { unquotedSheet } from '../../sheet/names.js';
import type { Calculated } from '../recalculate/calculate.js';

type Place = { sheet: number; zone: Zone };

const stampName = 'ShopStamp';

/** The cell that shows the shop's stamp; undefined where the workbook has none of that name. */
export function stampPlace(scope: Scope): Place | undefined {
  return placeOfName(scope, stampName);
}

function placeOfName(scope: Scope, name: string): Place | undefined {
  const found = findName(scope, name, -1);
  return found && placeOf(scope, found.text);
}

/** `Shop!$B$4` as a place. */
function placeOf(scope: Scope, text: string, sheet = -1): Place | undefined {
  const at = text.lastIndexOf('!');
  const zone = parseZone(text.slice(at + 1).replaceAll('$', ''));
  const position = at < 0 ? sheet : sheetPosition(scope, unquotedSheet(text.slice(0, at)));
  return zone && position >= 0 ? { sheet: position, zone } : undefined;
}

/** A calculated workbook file as cards and stock plans read it. */
export function bookOfFile({
  workbook,
  scope,
  grids,
}: Pick<Calculated, 'workbook' | 'scope' | 'grids'>): Book {
  const stamp = stampPlace(scope);
  const cellsAt = ({ sheet, zone: { top, bottom, left, right } }: Place): CellValue[][] =>
    Array.from({ length: bottom - top + 1 }, (_, down) =>
      Array.from({ length: right - left + 1 }, (__, across) =>
        plain(grids[sheet]?.value(top + down, left + across) ?? null),
      ),
    );

  return {
    stampFormula: stamp && formulaAt(stamp),
    cells: (range) => {
      if (range.kind === 'table') {
        const table = scope.tables.get(range.name.toLowerCase());
        return table && cellsAt({ sheet: table.sheet, zone: dataZone(table) });
      }
      const place =
        range.kind === 'name'
          ? placeOfName(scope, range.name)
          : placeOf(
              scope,
              range.address,
              range.sheet === undefined ? stamp?.sheet : sheetPosition(scope, range.sheet),
            );
      return place && cellsAt(place);
    },
    tables: workbook.tables.map((table) => ({
      name: table.name,
      cells: cellsAt({ sheet: table.sheet, zone: dataZone(table) }),
      headingRow: table.zone.top + 1,
      hidden: new Set([...(workbook.sheets[table.sheet]?.cells?.hiddenRows ?? [])].map((row) => row + 1)),
    })),
  };

  function formulaAt({ sheet, zone }: Place): string | undefined {
    const cells = workbook.sheets[sheet]?.cells;
    const at = cells?.index.get(cellKey(zone.top, zone.left));
    const formula = at === undefined ? undefined : cells?.formulas[at];
    if (!formula) return undefined;
    return `=${moveFormula(formula.text, zone.top - formula.baseRow, zone.left - formula.baseColumn)}`;
  }
}

/** The headings and the rows of a table, without a total row. */
function dataZone({ zone, totalsRows }: Table): Zone {
  return { ...zone, bottom: zone.bottom - totalsRows };
}

function plain(value: unknown): CellValue {
  if (isCellError(value)) return value.error;
  return value as CellValue;
}
