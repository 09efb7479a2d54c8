import type { Pausing } from '../../xlsx/pausing.js';
import { PartCells } from '../../xlsx/partCells.js';
import type { XmlElement } from '../../xlsx/xml/element.js';
import { sheetNow, type GivenSheet } from '../open/givenSheet.js';
import { saveCells, type Sides } from './cells/saveCells.js';
import { changeHeaders } from './headers.js';
import { moveSheet } from './moved/moveSheet.js';
import { changeMerges, changeRules, changeTabColor, changeView, unselect } from './sheetLook.js';

const newSheet: GivenSheet = {
  rows: [],
  columns: [],
  frozen: { rows: 0, columns: 0 },
  gridLines: true,
  visible: true,
  color: undefined,
  rules: new Map(),
};

/** Changes a sheet's part to what the grid has of the sheet now; tells whether formulas went. */
export function* saveSheet(root: XmlElement, sheet: Omit<Sides, 'cells'>): Pausing<boolean> {
  const { open, sheetId, move, adapt } = sheet;
  if (move.moved) moveSheet(root, move, adapt);
  yield;
  const cells = new PartCells(root);
  yield;
  const formulasWent = yield* saveCells({ ...sheet, cells });
  yield;
  const now = sheetNow(open.book.model, sheetId);
  yield;
  const given = open.sheets.get(sheetId) ?? newSheet;
  changeHeaders(root, cells, now, given, move);
  changeRules(root, now.rules, given.rules, move);
  changeMerges(root, open.book.getters.getMerges(sheetId));
  changeView(root, now, given);
  if ((now.color || undefined) !== (given.color || undefined)) changeTabColor(root, now.color);
  if (given.visible && !now.visible) unselect(root);
  return formulasWent;
}
