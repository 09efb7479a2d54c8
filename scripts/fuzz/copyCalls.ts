import { cellAddress, columnLetters } from '../../src/sheet/address.js';
import { bringFormulasBack } from '../../src/xlsx/freeze/bringFormulasBack.js';
import { valuesCopy } from '../../src/xlsx/freeze/valuesCopy.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { WorkbookRefused } from '../../src/xlsx/refusal/refusal.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { type BuiltSheet, buildWorkbook, formula } from '../../tests/xlsx/support/buildWorkbook.js';
import type { FuzzKind } from './kind.js';
import { editedList, type ListRow, newList, type PartsList, typedHeadings } from './partsLists.js';
import type { Random } from './random.js';

/*
 * Formulas become values, somebody works on the list, and the formulas come back: each stands in the row of its part, as
 * it would read there, or the file is refused by a sentence that names what is missing.
 */

const keptName = 'Tonrow formulas';
const names = { ShopStamp: 'Shop!$B$1' };
const shop: BuiltSheet = { name: 'Shop', rows: [['Stamp', 'in · 1 press · rules 1 · AAAA-BBBB-CCCC']] };

type Cells = NonNullable<BuiltSheet['rows']>;

/** The cells of a list; `own` is what stands for a formula of ours. */
function cellsOf(list: PartsList, own: (text: string, shown: string) => Cells[number][number]): Cells {
  const line = ({ typed, formulas, shown }: ListRow, row: number): Cells[number] =>
    list.columns.map(({ kind, at }) => {
      if (kind === 'typed') return typed[at];
      if (kind === 'native') return formula(`LEN(${columnLetters(0)}${row + 1})`, 2);
      const text = formulas[at]?.(row + 1, list);
      return text === undefined ? undefined : own(text, shown[at] ?? '');
    });
  const first = list.above.length + 1;
  return [
    ...list.above.map((text) => (text === '' ? [] : [text])),
    list.columns.map(({ heading }) => heading),
    ...list.rows.map((row, at) => line(row, first + at)),
    ...(list.below ? [[], [own(list.below.text, list.below.shown)]] : []),
  ];
}

function sheetOf(list: PartsList, rows: Cells): BuiltSheet {
  const top = list.above.length + 1;
  const ref = `A${top}:${columnLetters(list.columns.length - 1)}${top + list.rows.length}`;
  const columns = list.columns.map(({ heading }) => heading);
  return { name: 'Quote', rows, tables: list.isTable ? [{ name: 'Parts', ref, columns }] : [] };
}

/** The copy as a program saves it after somebody worked on the list. */
function savedCopy(copy: Uint8Array, list: PartsList): Uint8Array {
  const kept = readSheetValues(copy, keptName) as Cells;
  const shown = cellsOf(list, (_, value) => value);
  return buildWorkbook([sheetOf(list, shown), shop, { name: keptName, rows: kept }], { names });
}

/** Where formulas of ours stand in a file, and what they are. */
function ownFormulas(bytes: Uint8Array): Map<string, string> {
  const { cells } = openWorkbook(bytes).sheets[0] ?? {};
  const found = new Map<string, string>();
  cells?.formulas.forEach((stored, at) => {
    const [row, column] = [cells.rows[at] as number, cells.columns[at] as number];
    if (stored?.text.includes('TONROW')) found.set(cellAddress(row, column), stored.text);
  });
  return found;
}

/** Where they belong: as if the same work had been done on the list with its formulas. */
function wantedFormulas(list: PartsList): Map<string, string> {
  const wanted = new Map<string, string>();
  cellsOf(list, (text) => formula(text)).forEach((cells, row) =>
    cells.forEach((content, column) => {
      if (typeof content !== 'object' || content === null) return;
      const text = ownText(content.inner);
      if (text !== undefined) wanted.set(cellAddress(row, column), text);
    }),
  );
  return wanted;
}

const ownText = (inner: string) => /^<f>(.*TONROW.*)<\/f>/.exec(inner)?.[1];

/** Whether a sentence names a cell, or quotes a heading or what a row held. */
const namesWhatIsMissing = (sentence: string) =>
  sentence.startsWith('The formulas were not brought back: ') && /[A-Z]\d|"/.test(sentence);

/** What is wrong with a round trip; undefined when all is well. */
function wrongRoundTrip(before: PartsList, after: PartsList, edits: readonly string[]): string | undefined {
  const file = buildWorkbook([sheetOf(before, cellsOf(before, formula)), shop], { names });
  const { bytes: copy, formulas } = valuesCopy(file, { kind: 'shop' });
  if (ownFormulas(copy).size > 0) return 'the copy has formulas of ours';
  let back;
  try {
    back = bringFormulasBack(savedCopy(copy, after));
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    if (edits.length === 0) return `refused without any edit: ${error.message}`;
    return namesWhatIsMissing(error.message) ? undefined : `names nothing: ${error.message}`;
  }
  const [found, wanted] = [ownFormulas(back.bytes), wantedFormulas(after)];
  for (const [cell, text] of wanted)
    if (found.get(cell) !== text) return `${cell} holds ${found.get(cell) ?? 'no formula'}, not ${text}`;
  for (const cell of found.keys())
    if (!wanted.has(cell)) return `${cell} has a formula that belongs elsewhere`;
  if (back.restored !== wanted.size || back.restored + back.gone.length !== formulas)
    return `${back.restored} formulas came back and ${back.gone.length} are gone, of ${formulas}`;
  return changedValue(savedCopy(copy, after), back.bytes);
}

/** Bringing formulas back changes no value that somebody sees. */
function changedValue(before: Uint8Array, after: Uint8Array): string | undefined {
  const [was, is] = [before, after].map((bytes) => openWorkbook(bytes).sheets[0]?.cells);
  for (const [key, at] of was?.index ?? []) {
    const value = is?.values[is.index.get(key) ?? -1] ?? null;
    if ((was?.values[at] ?? '') !== (value ?? ''))
      return `the cell with the key ${key} showed ${JSON.stringify(was?.values[at])}, then ${JSON.stringify(value)}`;
  }
  return undefined;
}

/** Lists whose formulas become values and come back. */
export function copyCalls(): FuzzKind {
  return {
    name: 'copies',
    call: (random: Random, keep) => {
      const before = newList(random);
      const { list, edits } = editedList(random, before);
      keep({ edits, headings: typedHeadings, before, after: list });
      return Promise.resolve(wrongRoundTrip(before, list, edits));
    },
  };
}
