import type { Worksheet } from '../storedCells.js';
import { XmlElement } from '../xml/element.js';

/** The places in the table of shared texts that the cells use that stay in these sheets. */
export function usedStrings(
  sheets: readonly { cells: Worksheet; stays: (row: number, column: number) => boolean }[],
): Set<number> {
  const used = new Set<number>();
  for (const { cells, stays } of sheets)
    cells.starts.forEach((start, at) => {
      if (!stays(cells.rows[at] ?? 0, cells.columns[at] ?? 0)) return;
      const cell = XmlElement.read(cells.xml.slice(start, cells.ends[at]));
      const place = cell.attribute('t') === 's' ? cell.child('v')?.text : undefined;
      if (place !== undefined) used.add(Number(place));
    });
  return used;
}

/** Empties the texts of the table that nobody uses; the others keep their places. */
export function emptyUnused(table: XmlElement, used: ReadonlySet<number>): void {
  const texts = table.children.filter(({ name }) => name === 'si');
  texts.forEach((text, place) => {
    if (used.has(place)) return;
    text.keep(() => false);
    text.insert('<t/>');
  });
}
