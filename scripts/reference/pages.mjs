// The generated pages by file name.
import { functionsPage } from './functions.mjs';
import { headingsPage } from './headings.mjs';
import { notationPage } from './notation.mjs';
import { shopSheetPage } from './shopSheet.mjs';

/** What the examples of the reference give, by function name, through the command `calc` over a workbook. */
export async function exampleResults(calc, { catalog }, workbook, folder) {
  const lines = [];
  const setting = {
    out: (text) => lines.push(text),
    err: (text) => lines.push(text),
    input: () => Promise.resolve(undefined),
    folder,
  };
  const formulas = catalog.map(({ example }) => example);
  const status = await calc(['--json', '--workbook', workbook, ...formulas], setting);
  if (status !== 0) throw new Error(`The examples did not run: ${lines.join('')}`);
  return Object.fromEntries(catalog.map(({ name }, index) => [name, JSON.parse(lines[index])]));
}

export function generatedPages(sources, results) {
  return {
    'reference.md': functionsPage(sources, results),
    'notation.md': notationPage(sources),
    'headings.md': headingsPage(sources),
    'shop-sheet.md': shopSheetPage(sources),
  };
}

/** A page as the project formats its pages. */
export async function formatted(text, prettier, root) {
  const options = await prettier.resolveConfig(`${root}/README.md`);
  return prettier.format(text, { ...options, parser: 'markdown' });
}
