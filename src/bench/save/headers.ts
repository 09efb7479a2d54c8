import type { XmlElement } from '../../xlsx/xml/element.js';
import { usualColumn, type GivenHeader, type GivenSheet } from '../open/givenSheet.js';
import { columnCharacters, rowPoints } from '../open/layoutData.js';
import type { PartCells } from '../../xlsx/partCells.js';
import { changeColumns } from './moved/columns.js';
import type { HeaderMap } from './moved/headerMap.js';
import type { SheetMove } from './moved/sheetMove.js';

/** Stores the heights and widths that were changed, and what was hidden or shown. */
export function changeHeaders(
  sheet: XmlElement,
  cells: PartCells,
  now: GivenSheet,
  given: GivenSheet,
  move: SheetMove,
): void {
  const rows = changed(now.rows, given.rows, move.rows, undefined, (size) => ({
    ht: size && rowPoints(size),
    customHeight: size && 1,
  }));
  for (const [row, attributes] of rows) cells.row(row).set(attributes);
  const columns = changed(now.columns, given.columns, move.columns, usualColumn, (size = usualColumn) => ({
    width: columnCharacters(size),
    customWidth: 1,
  }));
  changeColumns(sheet, columns);
}

type Attributes = Record<string, number | undefined>;

/** The attributes of each row or column that is not as the grid was given it. */
function changed(
  now: readonly GivenHeader[],
  given: readonly GivenHeader[],
  map: HeaderMap,
  usual: number | undefined,
  sized: (size: number | undefined) => Attributes,
): Map<number, Attributes> {
  const changes = now.map(({ size, hidden }, place): [number, Attributes] => {
    const before = given[map.origin(place) ?? -1] ?? { size: usual, hidden: false };
    const resized = size === before.size ? {} : sized(size);
    return [place, hidden === before.hidden ? resized : { ...resized, hidden: hidden ? 1 : undefined }];
  });
  return new Map(changes.filter(([, attributes]) => Object.keys(attributes).length > 0));
}
