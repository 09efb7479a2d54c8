import { isCoreCommand } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Pausing } from '../../xlsx/pausing.js';
import type { Workbook } from '../../xlsx/workbook.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { openingBook, type KnownFunctions, type OpenBook } from '../open/openBook.js';
import { GridWorkbook } from '../port/gridWorkbook.js';
import type { PostponedCalls } from '../engine/postponedCalls.js';
import { saveBook, savingBook, type SavedBook } from '../save/saveBook.js';
import { cellNote } from './cellNote.js';
import { offerCopies, type OpenFile } from './offerCopies.js';
import { mountGrid } from './grid.js';
import { inTurns, Stopped } from './inTurns.js';
import type { LaterCalls, Shown } from './laterCalls.js';
import type { Progress } from './progress.js';
import type { Speech } from './speech.js';

const exampleName = 'quote.xlsx';
/** Cells for which the grid takes a second and more. */
const manyCells = 60_000;

/** Does work in turns with everything else that the page has to do. */
type Worker = <Result>(work: Pausing<Result>) => Promise<Result>;

export interface PageParts {
  /** Holds the grid and the pane. */
  frame: HTMLElement;
  grid: HTMLElement;
  pane: HTMLElement;
  fileName: HTMLElement;
  speech: Speech;
  progress: Progress;
  later: LaterCalls;
}

/** The one workbook that is open: its grid, its pane, and whether it is saved. */
export class PageWorkbook {
  private open: OpenBook | undefined;
  private shown: Shown | undefined;
  private clear: (() => void) | undefined;
  private name = exampleName;
  private changed = false;
  private opening: Promise<void> = Promise.resolve();

  constructor(
    private readonly parts: PageParts,
    private readonly functions: KnownFunctions,
    private readonly postponed: PostponedCalls,
  ) {}

  get isChanged(): boolean {
    return this.changed;
  }

  /** Results came later than their cells were calculated. */
  calculate(): void {
    this.open?.book.model.dispatch('EVALUATE_CELLS');
  }

  async openExample(): Promise<void> {
    await this.openFrom(exampleName, () => fetched(exampleName));
  }

  async openEmpty(): Promise<void> {
    await this.openFrom('workbook.xlsx', () => fetched('empty.xlsx'));
  }

  async openFile(file: File): Promise<void> {
    await this.openFrom(file.name, () => file.arrayBuffer());
  }

  /** One workbook opens after the other, however fast the buttons are pressed. */
  private openFrom(name: string, read: () => Promise<ArrayBuffer>): Promise<void> {
    const opened = this.opening.then(() => this.openNext(name, read));
    this.opening = opened.catch(() => undefined);
    return opened;
  }

  /** A workbook that is refused leaves the open one as it is. */
  private async openNext(name: string, read: () => Promise<ArrayBuffer>): Promise<void> {
    const { speech } = this.parts;
    const question = `What you changed in ${this.name} is not saved.`;
    if (this.changed && !(await speech.confirm(question, ['Leave it unsaved', 'Stay']))) return;
    speech.say(`Opening ${name} …`);
    try {
      await this.whileBusy(`Opening ${name}`, async (work) => {
        const making = openingBook(new Uint8Array(await read()), this.functions, {
          postponed: this.postponed,
          beforeGrid: (workbook) => this.beforeGrid(workbook),
        });
        const opened = await work(making);
        await this.show(opened, name);
        speech.say(keptNews(opened.formulas.filter((formula) => formula.kept !== undefined).length));
      });
    } catch (error) {
      speech.say('');
      this.stays();
      if (error instanceof Stopped) return speech.complain(`${name} was not opened: you stopped it.`);
      if (error instanceof WorkbookRefused)
        return speech.complain(`${name} was not opened. ${error.message}`);
      speech.complain(`${name} was not opened: this page could not read it.`);
      throw error;
    }
  }

  /** The workbook that was open stays: what waited for it was forgotten where the grid had begun. */
  private stays(): void {
    this.postponed.forget();
    this.parts.later.of(this.shown);
    this.calculate();
  }

  /** Long work on the workbook, during which nobody types into it; its line has a button that ends it. */
  private async whileBusy(doing: string, act: (work: Worker) => Promise<void>): Promise<void> {
    const { frame, progress } = this.parts;
    const stop = new AbortController();
    frame.inert = true;
    frame.ariaBusy = 'true';
    await painted();
    const since = performance.now();
    const tell = () => {
      // What is done in a moment needs no line.
      if (performance.now() - since > 300) progress.tellOf(doing, () => stop.abort());
    };
    try {
      await act((work) => inTurns(work, { signal: stop.signal, progress: tell }));
    } finally {
      progress.end();
      frame.inert = false;
      frame.ariaBusy = 'false';
    }
  }

  /** The grid takes seconds for many cells and cannot be stopped: that is said before. */
  private beforeGrid({ sheets }: Workbook): void {
    this.parts.later.of(undefined);
    const cells = sheets.reduce((sum, sheet) => sum + (sheet.cells?.rows.length ?? 0), 0);
    if (cells > manyCells)
      this.parts.speech.say(
        `The grid takes in ${cells.toLocaleString('en')} cells. The page answers again when that is done.`,
      );
  }

  private async show(opened: OpenBook, name: string): Promise<void> {
    const { grid, pane, fileName, speech } = this.parts;
    this.clear?.();
    const clearGrid = await mountGrid(grid, opened.book, speech);
    // The pane is loaded on its own: the workbook is there before it.
    const { mountPane } = await import('../../taskpane/index.js');
    offerCopies(() => ({ name, bytes: saveBook(opened).bytes }), give);
    const workbook = new GridWorkbook(opened.book);
    const clearPane = mountPane(pane, workbook);
    const { model } = opened.book;
    // Widths and looks are changes too, of which the pane is not told.
    model.on('command-dispatched', this, (given: unknown) => {
      const command = given as { type: string };
      if (!isCoreCommand(command) && command.type !== 'UNDO' && command.type !== 'REDO') return;
      this.changed = true;
      speech.changed();
    });
    const stop = await workbook.watch(({ kind }) => {
      if (kind === 'selected' || kind === 'calculated') speech.ofCell(cellNote(opened));
    });
    this.clear = () => {
      model.off('command-dispatched', this);
      void stop();
      clearPane();
      clearGrid();
    };
    this.open = opened;
    this.shown = { book: opened.book, workbook };
    this.parts.later.of(this.shown);
    this.changed = false;
    this.name = fileName.textContent = name;
    document.title = `${name} · Tonrow`;
  }

  /** Gives the user the file, with what was changed in it. */
  async save(): Promise<void> {
    const { speech, later } = this.parts;
    const { open } = this;
    if (!open) return;
    speech.say(`Saving ${this.name} …`);
    try {
      // A file holds no values that are still to come.
      await later.settled();
      await this.whileBusy(`Saving ${this.name}`, async (work) => this.saved(await work(savingBook(open))));
    } catch (error) {
      speech.say('');
      if (error instanceof Stopped) return speech.complain(`${this.name} was not saved: you stopped it.`);
      if (error instanceof WorkbookRefused)
        return speech.complain(`${this.name} was not saved: ${error.message}`);
      speech.complain(`${this.name} was not saved: what was changed could not be written into its file.`);
      throw error;
    }
  }

  private saved({ bytes, notes }: SavedBook): void {
    give({ name: this.name, bytes });
    this.changed = false;
    this.parts.speech.sayUntilChanged([`${this.name} is saved.`, ...notes].join(' '));
  }
}

/** Large files take seconds: what was said is on the screen before the work begins. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
}

async function fetched(file: string): Promise<ArrayBuffer> {
  const answer = await fetch(file);
  if (!answer.ok) throw new WorkbookRefused('It is not there: build the page again.');
  return answer.arrayBuffer();
}

/** Hands the browser a file to keep. */
function give({ name, bytes }: OpenFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: workbookType }));
  link.download = name;
  link.click();
  // The browser takes the file after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function keptNews(kept: number): string {
  if (kept === 0) return '';
  return kept === 1
    ? '1 formula is not calculated here: it keeps its value and is marked.'
    : `${kept} formulas are not calculated here: they keep their values and are marked.`;
}

const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
