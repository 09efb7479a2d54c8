import type { Sheet } from '../../../xlsx/workbook.js';
import type { PackageParts } from '../../../xlsx/packageParts.js';
import { movedComments, movedDrawing, movedNoteShapes } from './movedNotes.js';
import { withTexts } from './movedTexts.js';
import { movedFormula } from './movedFormula.js';
import { hasMoved, type SheetMove } from '../headers/sheetMoves.js';

const rules = ['formula', 'formula1', 'formula2', 'f'];
const columnFormulas = ['calculatedColumnFormula', 'totalsRowFormula'];

/** Brings what the grid does not know of along: rules, notes, pictures and the sources of charts. */
export function moveOthers(parts: PackageParts, sheets: readonly Sheet[], all: readonly SheetMove[]): void {
  const charts = new Set<string>();
  sheets.forEach(({ part, cells }, position) => {
    const move = all[position];
    if (move?.name === undefined) return;
    const adapt = (text: string) => movedFormula(text, move, all);
    // The rules of a sheet that moved itself have been moved with its cells.
    if (cells && !hasMoved(move)) change(parts, part, (xml) => withTexts(xml, rules, adapt));
    for (const { type, target } of parts.relationships(part)) {
      if (type === 'table') change(parts, target, (xml) => withTexts(xml, columnFormulas, adapt));
      if (type === 'drawing') collectCharts(parts, target, charts);
      if (hasMoved(move)) moveBeside(parts, type, target, move);
    }
  });
  for (const chart of charts)
    change(parts, chart, (xml) => withTexts(xml, ['f'], (text) => movedFormula(text, undefined, all)));
}

function collectCharts(parts: PackageParts, drawing: string, charts: Set<string>): void {
  for (const { type, target } of parts.relationships(drawing)) if (type === 'chart') charts.add(target);
}

function moveBeside(parts: PackageParts, type: string, target: string, move: SheetMove): void {
  if (type === 'comments' || type === 'threadedComment')
    change(parts, target, (xml) => movedComments(xml, move));
  if (type === 'vmlDrawing') change(parts, target, (xml) => movedNoteShapes(xml, move));
  if (type === 'drawing') change(parts, target, (xml) => movedDrawing(xml, move));
}

function change(parts: PackageParts, part: string, how: (xml: string) => string): void {
  const xml = parts.xml(part);
  if (xml !== undefined) parts.set(part, how(xml));
}
