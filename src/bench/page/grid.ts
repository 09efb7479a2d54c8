import 'bootstrap/dist/css/bootstrap.min.css';
import 'font-awesome/css/font-awesome.min.css';
import '@odoo/o-spreadsheet/dist/o_spreadsheet.css';
import { App } from '@odoo/owl';
import { Spreadsheet } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import templates from '@odoo/o-spreadsheet/dist/o_spreadsheet.xml?raw';
import type { GridBook } from '../book/gridBook.js';
import { pageWords } from './gridTexts.js';

/** How the grid speaks to the user. */
export interface GridVoice {
  say(text: string): void;
  complain(text: string, then?: () => void): void;
  ask(text: string, yes: () => void, no?: () => void): void;
}

/** Shows a book in an element; gives what takes it away again. */
export async function mountGrid(element: HTMLElement, book: GridBook, voice: GridVoice): Promise<() => void> {
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  const app = new App(Spreadsheet as never, {
    props: {
      model: book.model,
      colorScheme: dark ? 'dark' : 'light',
      notifyUser: ({ text }: { text: string }) => inWords(text, (words) => voice.say(words)),
      raiseError: (text: string, then?: () => void) => inWords(text, (words) => voice.complain(words, then)),
      askConfirmation: (text: string, yes: () => void, no?: () => void) =>
        inWords(text, (words) => voice.ask(words, yes, no)),
    },
    templates,
  });
  await app.mount(element);
  return () => app.destroy();
}

function inWords(text: string, say: (words: string) => void): void {
  const words = pageWords(text);
  if (words !== undefined) say(words);
}
