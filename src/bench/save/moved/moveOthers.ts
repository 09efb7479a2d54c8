import type { Sheet } from '../../../xlsx/workbook.js';
import type { PackageParts } from '../../../xlsx/packageParts.js';
import type { XmlElement } from '../../../xlsx/xml/element.js';
import { movedFormula } from '../../../sheet/formula/movedFormula.js';
import { moveComments, moveDrawing, movedNoteShapes } from './moveNotes.js';
import type { SheetMove } from './sheetMove.js';

/** Brings what the grid does not know of along: rules, notes, pictures and the sources of charts. */
export function moveOthers(parts: PackageParts, sheets: readonly Sheet[], all: readonly SheetMove[]): void {
  const charts = new Set<string>();
  sheets.forEach(({ part, cells }, position) => {
    const move = all[position];
    if (move?.name === undefined) return;
    const adapt = (text: string) => movedFormula(text, move, all);
    // The rules of a sheet that moved itself have been moved with its cells.
    if (cells && !move.moved) changeTexts(parts.find(part), ['formula', 'formula1', 'formula2', 'f'], adapt);
    for (const { type, target } of parts.relationships(part)) {
      if (type === 'table')
        changeTexts(parts.find(target), ['calculatedColumnFormula', 'totalsRowFormula'], adapt);
      if (type === 'drawing')
        for (const link of parts.relationships(target)) if (link.type === 'chart') charts.add(link.target);
      if (move.moved) moveBeside(parts, type, target, move);
    }
  });
  for (const chart of charts)
    changeTexts(parts.find(chart), ['f'], (text) => movedFormula(text, undefined, all));
}

function moveBeside(parts: PackageParts, type: string, target: string, move: SheetMove): void {
  const shapes = type === 'vmlDrawing' ? parts.xml(target) : undefined;
  if (shapes !== undefined) parts.set(target, movedNoteShapes(shapes, move));
  const root = ['comments', 'threadedComment', 'drawing'].includes(type) ? parts.find(target) : undefined;
  if (root && type === 'drawing') moveDrawing(root, move);
  else if (root) moveComments(root, move);
}

/** Changes the texts of some elements of a part; cells are passed over. */
function changeTexts(
  root: XmlElement | undefined,
  names: readonly string[],
  change: (text: string) => string,
): void {
  for (const element of root?.within('sheetData') ?? [])
    if (names.includes(element.name)) element.text = change(element.text);
}
