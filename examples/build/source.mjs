// Reads the tab-separated sources. A cell is text exactly as an estimator types it, except:
// `number:36` is a number cell, `date:45724` a fraction that the spreadsheet turned into a date.
import { readFileSync } from 'node:fs';
import path from 'node:path';

/** The rows of a source, headings first; every row has as many cells as there are headings. */
export function readSource(folder, name) {
  const lines = readFileSync(path.join(folder, `${name}.tsv`), 'utf8')
    .replace(/\n$/, '')
    .split('\n');
  const rows = lines.map((line) => line.split('\t'));
  const width = rows[0].length;
  return rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? ''));
}

/** A cell of a source. Plain digits are a number only in columns that hold numbers. */
export function sourceCell(text, { numeric = false, style } = {}) {
  if (text === '') return { style };
  const marked = /^(number|date):(\d+(?:\.\d+)?)$/.exec(text);
  if (marked) return { value: Number(marked[2]), style: marked[1] === 'date' ? 'dayMonth' : style };
  return { value: numeric && /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : text, style };
}
