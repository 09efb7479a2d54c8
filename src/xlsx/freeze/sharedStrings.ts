import type { Worksheet } from '../storedCells.js';
import { XmlElement } from '../xml/element.js';

/** The places in the table of shared texts that cells of these sheets use. */
export function usedStrings(sheets: readonly Worksheet[]): Set<number> {
  const used = new Set<number>();
  for (const { xml, starts, ends } of sheets)
    starts.forEach((start, at) => {
      const cell = XmlElement.read(xml.slice(start, ends[at]));
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
