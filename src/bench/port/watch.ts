import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import type { Zone } from '../../sheet/address.js';
import type { Area } from '../../workbook/area.js';
import type { Author, Change } from '../../workbook/change.js';
import type { GridBook } from '../book/gridBook.js';
import { manyCells, type CellUpdate } from '../engine/manyCells.js';
import { areaOf, areaOfPlace } from './gridPlaces.js';

type Command = {
  type: string;
  content?: string;
  commands?: readonly Command[];
  cells?: readonly CellUpdate[];
  cellIds?: readonly number[];
} & Partial<CellPosition>;

const moving = new Set([
  'ADD_COLUMNS_ROWS',
  'REMOVE_COLUMNS_ROWS',
  'MOVE_COLUMNS_ROWS',
  'INSERT_CELL',
  'DELETE_CELL',
]);
const hiding = new Set(['HIDE_COLUMNS_ROWS', 'UNHIDE_COLUMNS_ROWS', 'UPDATE_FILTER']);
const ofSheets = new Set(['CREATE_SHEET', 'DELETE_SHEET', 'RENAME_SHEET', 'DUPLICATE_SHEET', 'MOVE_SHEET']);

/** Commands with those for many cells as one for each: while they are done, the engine tells of each. */
const singly = (commands: readonly Command[]): Command[] =>
  commands.flatMap(({ type, sheetId, cells = [], ...rest }): Command[] =>
    type === manyCells
      ? cells.map((cell) => ({ type: 'UPDATE_CELL', ...(sheetId !== undefined && { sheetId }), ...cell }))
      : [{ type, cells, ...(sheetId !== undefined && { sheetId }), ...rest }],
  );

/** What was noted since the grid last finished, by sheet. */
class Notes {
  readonly edited = new Map<UID, Zone>();
  readonly moved = new Set<UID>();
  sheets = false;
  /** Rows were hidden or shown. */
  shown = false;
  author: Author = 'here';
  /** Cells that were calculated on their own, or everything. */
  calculated: readonly number[] | 'all' | undefined;

  edit(sheetId: UID, row: number, col: number): void {
    this.edited.set(sheetId, grown(this.edited.get(sheetId), row, col));
  }
}

function grown(zone: Zone | undefined, row: number, col: number): Zone {
  if (!zone) return { top: row, bottom: row, left: col, right: col };
  return {
    top: Math.min(zone.top, row),
    bottom: Math.max(zone.bottom, row),
    left: Math.min(zone.left, col),
    right: Math.max(zone.right, col),
  };
}

/** Tells of what happens in the grid: what one command did is told together, after it is calculated. */
export class Teller {
  private readonly listeners = new Set<(change: Change) => void>();
  private notes = new Notes();
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

  /** The command that comes evaluates what others have collected, or what hangs on the cells it names. */
  evaluated(): void {
    this.notes.calculated = 'all';
  }

  listen(listener: (change: Change) => void): () => void {
    const mine = (change: Change) => listener(change);
    this.listeners.add(mine);
    return () => void this.listeners.delete(mine);
  }

  selection(): Area[] {
    const { getters } = this.book;
    const sheet = this.book.sheetName(getters.getActiveSheetId()) ?? '';
    return getters.getSelectedZones().map((zone) => areaOf(sheet, zone));
  }

  private note(command: Command): void {
    const { type, sheetId, row, col, content } = command;
    const { notes } = this;
    // The engine replays what others did.
    if ((this.book.model as unknown as { isReplayingCommand: boolean }).isReplayingCommand)
      notes.author = 'elsewhere';
    if (type === 'UNDO' || type === 'REDO') singly(command.commands ?? []).forEach((each) => this.note(each));
    else if (type === 'UPDATE_CELL') {
      if (content !== undefined && sheetId !== undefined && row !== undefined && col !== undefined)
        notes.edit(sheetId, row, col);
    } else if (moving.has(type)) notes.moved.add(sheetId ?? this.book.getters.getActiveSheetId());
    else if (ofSheets.has(type)) notes.sheets = true;
    else if (hiding.has(type)) notes.shown = true;
    else if (type === 'EVALUATE_CELLS' && notes.calculated !== 'all')
      notes.calculated = command.cellIds ?? 'all';
  }

  private tell(): void {
    const { notes, ours } = this;
    this.notes = new Notes();
    if (this.listeners.size === 0) return;
    const { author } = notes;
    if (notes.sheets) this.send({ kind: 'sheets' });
    if (notes.shown) this.send({ kind: 'shown' });
    for (const id of notes.moved) this.send({ kind: 'moved', areas: this.used(id), author, ours });
    for (const [id, zone] of notes.edited) {
      const sheet = this.book.sheetName(id);
      if (sheet !== undefined) this.send({ kind: 'cells', areas: [areaOf(sheet, zone)], author, ours });
    }
    const edited = notes.edited.size + notes.moved.size > 0;
    const calculated = notes.calculated ?? (edited ? 'all' : undefined);
    const areas = calculated ? this.calculated(calculated) : [];
    if (areas.length > 0) this.send({ kind: 'calculated', areas });
  }

  private used(sheetId: UID): Area[] {
    const sheet = this.book.sheetName(sheetId);
    return sheet === undefined
      ? []
      : [areaOfPlace({ usedOf: sheet }, this.book)].filter(({ rows }) => rows > 0);
  }

  /** The cells that were calculated: on each sheet the area with all its formulas, or those that were named. */
  private calculated(which: readonly number[] | 'all'): Area[] {
    const { getters } = this.book;
    const formulas = () =>
      getters.getSheetIds().flatMap((id) => getters.getCells(id).filter(({ isFormula }) => isFormula));
    const zones = new Map<UID, Zone>();
    for (const cell of which === 'all' ? formulas().map(({ id }) => id) : which) {
      const position = getters.tryGetCellPosition(cell);
      if (!position) continue;
      const { sheetId, row, col } = position;
      zones.set(sheetId, grown(zones.get(sheetId), row, col));
    }
    return [...zones].flatMap(([id, zone]) => {
      const sheet = this.book.sheetName(id);
      return sheet === undefined ? [] : areaOf(sheet, zone);
    });
  }

  /** A listener may read and write in turn: it hears after the grid has finished. */
  private send(change: Change): void {
    for (const listener of [...this.listeners])
      queueMicrotask(() => {
        if (this.listeners.has(listener)) listener(change);
      });
  }
}
