import { registerFunctions } from '../engine/registerFunctions.js';
import { enterFirst, goRoundWithF6 } from './goRoundWithF6.js';
import { PostponedCalls } from '../engine/postponedCalls.js';
import { LaterCalls } from './laterCalls.js';
import { PageWorkbook } from './pageWorkbook.js';
import { loadBuiltFunctions } from './functions.js';
import { labelGrid } from './gridLabels.js';
import { hideWhatIsNotSaved } from './menus.js';
import { Progress } from './progress.js';
import { Speech } from './speech.js';
import { makeSplitter } from './splitter.js';
import { makeMenu, makeViews } from './views.js';
import './page.css';

/*
 * The page of the bench: a grid and the pane side by side, over the workbook that is open. `open` reads a
 * file into the grid, `book` is what is open, `engine` teaches the grid our functions, `port` lets the pane
 * read and write it, `save` writes the file.
 */

const part = <Kind extends HTMLElement = HTMLElement>(id: string): Kind =>
  document.getElementById(id) as Kind;

async function start(): Promise<void> {
  // The grid times everything it does on the console.
  console.debug = () => undefined;
  const speech = new Speech(part('news'), part('trouble'), part<HTMLDialogElement>('question'));
  makeSplitter(part('splitter'), part('frame'), part('pane'));
  const show = makeViews(part('frame'), { grid: part('show-grid'), pane: part('show-pane') });
  makeMenu(part('menu'), part('actions'));
  hideWhatIsNotSaved();
  labelGrid(part('grid'));
  goRoundWithF6([
    { element: part('top'), enter: () => enterFirst(part('top')) },
    { element: part('grid'), show: () => show('grid'), enter: () => enterGrid(part('grid')) },
    { element: part('splitter'), enter: () => part('splitter').focus() },
    { element: part('pane'), show: () => show('pane'), enter: () => enterFirst(part('pane')) },
  ]);
  try {
    const { functions, choices } = await loadBuiltFunctions('');
    const postponed = new PostponedCalls();
    const progress = new Progress(part('progress'));
    const workbook = new PageWorkbook(
      {
        frame: part('frame'),
        grid: part('grid'),
        pane: part('pane'),
        fileName: part('file-name'),
        speech,
        progress,
        later: new LaterCalls(postponed, progress),
      },
      functions,
      postponed,
    );
    registerFunctions(functions, choices, () => workbook.calculate(), postponed);
    takeButtons(workbook);
    takeDrops(workbook);
    await workbook.openExample();
  } catch (error) {
    speech.complain(`The page did not start: ${error instanceof Error ? error.message : String(error)}`);
    throw error;
  }
}

/** The grid takes keys where it edits cells. */
function enterGrid(grid: HTMLElement): void {
  const composers = grid.querySelectorAll<HTMLElement>('.o-composer');
  (composers[composers.length - 1] ?? grid).focus();
}

function takeButtons(workbook: PageWorkbook): void {
  const file = part<HTMLInputElement>('file');
  part('open').addEventListener('click', () => file.click());
  file.addEventListener('change', () => {
    const [chosen] = file.files ?? [];
    file.value = '';
    if (chosen) void workbook.openFile(chosen);
  });
  part('save').addEventListener('click', () => void workbook.save());
  part('empty').addEventListener('click', () => void workbook.openEmpty());
  part('new').addEventListener('click', () => void workbook.openExample());
  addEventListener('beforeunload', (event) => {
    if (workbook.isChanged) event.preventDefault();
  });
}

/** A file dropped anywhere on the page is opened. */
function takeDrops(workbook: PageWorkbook): void {
  const frame = part('frame');
  const holdsFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  addEventListener('dragover', (event) => {
    if (!holdsFile(event)) return;
    event.preventDefault();
    frame.classList.add('dropping');
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) frame.classList.remove('dropping');
  });
  addEventListener('drop', (event) => {
    if (!holdsFile(event)) return;
    event.preventDefault();
    frame.classList.remove('dropping');
    const [dropped] = event.dataTransfer?.files ?? [];
    if (dropped) void workbook.openFile(dropped);
  });
}

void start();
