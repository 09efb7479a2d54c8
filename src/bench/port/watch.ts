import type { Area } from '../../workbook/area';
import type { Change } from '../../workbook/change';
import type { GridBook } from '../book/gridBook';
import { areaOf, areaOfPlace } from './places';

interface Command {
  type: string;
  sheetId?: string;
  col?: number;
  row?: number;
  content?: string;
  format?: string;
  commands?: readonly Command[];
}

const moving = new Set([
  'ADD_COLUMNS_ROWS',
  'REMOVE_COLUMNS_ROWS',
  'MOVE_COLUMNS_ROWS',
  'INSERT_CELL',
  'DELETE_CELL',
]);
const ofSheets = new Set(['CREATE_SHEET', 'DELETE_SHEET', 'RENAME_SHEET', 'DUPLICATE_SHEET', 'MOVE_SHEET']);

/** Tells of what happens in the grid: what one command did is told together, after it is calculated. */
export class Teller {
  private readonly listeners = new Set<(change: Change) => void>();
  private edited = new Map<string, { top: number; bottom: number; left: number; right: number }>();
  private moved = new Set<string>();
  private sheets = false;
  private calculated = false;
  /** The port itself is writing. */
  ours = false;

  constructor(private readonly book: GridBook) {
    const { model } = book;
    model.on('command-dispatched', this, (command: unknown) => this.note(command as Command));
    model.on('command-finalized', this, () => this.tell());
    model.selection.observe(this, {
      handleEvent: () => this.send({ kind: 'selected', areas: this.selection() }),
    });
  }

  listen(listener: (change: Change) => void): () => void {
    const mine = (change: Change) => listener(change);
    this.listeners.add(mine);
    return () => void this.listeners.delete(mine);
  }

  selection(): Area[] {
    const { getters } = this.book;
    const sheet = getters.getSheetName(getters.getActiveSheetId());
    return getters.getSelectedZones().map((zone) => areaOf(sheet, zone));
  }

  private note(command: Command): void {
    const { type, sheetId, row, col } = command;
    if (type === 'UNDO' || type === 'REDO') command.commands?.forEach((each) => this.note(each));
    else if (type === 'UPDATE_CELL' && sheetId !== undefined && row !== undefined && col !== undefined)
      this.noteCell(sheetId, row, col);
    else if (moving.has(type)) this.moved.add(sheetId ?? this.book.getters.getActiveSheetId());
    else if (ofSheets.has(type)) this.sheets = true;
    else if (type === 'EVALUATE_CELLS') this.calculated = true;
  }

  private noteCell(sheetId: string, row: number, col: number): void {
    const zone = this.edited.get(sheetId);
    if (!zone) return void this.edited.set(sheetId, { top: row, bottom: row, left: col, right: col });
    zone.top = Math.min(zone.top, row);
    zone.bottom = Math.max(zone.bottom, row);
    zone.left = Math.min(zone.left, col);
    zone.right = Math.max(zone.right, col);
  }

  private tell(): void {
    const { edited, moved, sheets, calculated, ours } = this;
    this.edited = new Map();
    this.moved = new Set();
    this.sheets = this.calculated = false;
    if (this.listeners.size === 0) return;
    if (sheets) this.send({ kind: 'sheets' });
    for (const id of moved) this.send({ kind: 'moved', areas: this.used(id), author: 'here', ours });
    for (const [id, zone] of edited) {
      const sheet = this.book.getters.tryGetSheetName(id);
      if (sheet !== undefined)
        this.send({ kind: 'cells', areas: [areaOf(sheet, zone)], author: 'here', ours });
    }
    if (edited.size + moved.size > 0 || calculated)
      this.send({
        kind: 'calculated',
        areas: this.book.getters.getSheetIds().flatMap((id) => this.used(id)),
      });
  }

  private used(sheetId: string): Area[] {
    const sheet = this.book.getters.tryGetSheetName(sheetId);
    return sheet === undefined
      ? []
      : [areaOfPlace({ usedOf: sheet }, this.book)].filter(({ rows }) => rows > 0);
  }

  /** A listener may read and write in turn: it hears after the grid has finished. */
  private send(change: Change): void {
    for (const listener of [...this.listeners])
      queueMicrotask(() => {
        if (this.listeners.has(listener)) listener(change);
      });
  }
}
