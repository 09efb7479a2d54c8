// The example quote once more as a shop that works in millimeters keeps it: every bare number in mm, every size that
// is written without a unit given its inch mark. The parts and the presses are the same, so all results must be.
import { readFileSync } from 'node:fs';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { type CellValue, type InputChange, readSheetValues } from '../../src/headless/index.js';
import { type Quote, recalculatedQuote, shown, workbookFile } from './quote.js';

const mm = (inches: number) => Qty(inches, 'in').to('mm').scalar;
/** NIST SP 811, Appendix B.8: exact by definition. (The unit library has only six digits of it.) */
const newtonPerPoundForce = 4.448_221_615_260_5;
const tolerance = 1e-9;

/** Bare sizes carry an inch mark in a millimeter shop; sizes with a unit of their own stay as they are. */
function marked(text: string): string {
  if (/mm|'|"|^[CM]\d/.test(text)) return text;
  return text.replace(/(\d)(?=x|$)/gi, '$1"');
}

function inMillimeters(value: CellValue): CellValue {
  return typeof value === 'number' ? mm(value) : typeof value === 'string' ? marked(value) : value;
}

function columnName(at: number): string {
  return String.fromCharCode(65 + at);
}

/** The changes of a table: its rows below the row that holds these headings, until a row without the first. */
function tableChanges(
  sheet: string,
  headings: string[],
  change: (heading: string, value: CellValue, row: Record<string, CellValue>) => CellValue,
): InputChange[] {
  const cells = readSheetValues(new Uint8Array(readFileSync(workbookFile)), sheet);
  const top = cells.findIndex((row) => headings.every((heading) => row.includes(heading)));
  if (top < 0) throw new Error(`${sheet} has no row with ${headings.join(', ')}`);
  const titles = (cells[top] ?? []).map(String);
  const from = titles.indexOf(headings[0] ?? '');
  return cells.slice(top + 1).flatMap((row, below) => {
    const record = Object.fromEntries(titles.map((title, at) => [title, row[at] ?? null]));
    if (titles.slice(from, from + headings.length).every((title) => (record[title] ?? '') === '')) return [];
    return headings.flatMap((heading) => {
      const value = record[heading] ?? null;
      const changed = change(heading, value, record);
      if (changed === value) return [];
      return [{ sheet, cell: `${columnName(titles.indexOf(heading))}${top + below + 2}`, value: changed }];
    });
  });
}

function changesToMillimeters(): InputChange[] {
  const lengths = ['Section', 'Length', 'Hole', 'Bolt', 'Edge', 'End', 'Pitch', 'Gage'];
  return [
    ...tableChanges('Quote', lengths, (heading, value) =>
      // A fraction in a section or bolt says inches by itself; a whole size does not.
      (heading === 'Section' || heading === 'Bolt') && String(value).includes('/')
        ? value
        : inMillimeters(value),
    ),
    ...tableChanges('Shop', ['Press', 'Kind', 'Shape', 'Size', 'Length'], (heading, value) =>
      heading === 'Size' || heading === 'Length' ? inMillimeters(value) : value,
    ),
    ...tableChanges('Shop', ['Grade', 'Density'], (heading, value) =>
      heading === 'Density' && typeof value === 'number' ? Qty(value, 'lb/ft^3').to('kg/m^3').scalar : value,
    ),
    ...tableChanges('Shop', ['Setting', 'Value'], (heading, value, { Setting }) =>
      heading === 'Value' && Setting === 'Units' ? 'mm' : value,
    ),
  ];
}

/** Cells of the two workbooks that differ, each in a readable line. */
function differences(inches: Quote, millimeters: Quote, column: string, per: number): string[] {
  return [...inches.rows].flatMap(([mark, row]) => {
    const [a, b] = [row[column], millimeters.rows.get(mark)?.[column]];
    const same =
      typeof a === 'number' && typeof b === 'number'
        ? Math.abs(b * per - a) <= tolerance * Math.max(1, Math.abs(a))
        : shown(a) === shown(b);
    return same
      ? []
      : [`${mark} ${column}: ${shown(a)} in the inch shop, ${shown(b)} × ${per} in the mm shop`];
  });
}

describe('the example quote in millimeters', async () => {
  const inches = await recalculatedQuote();
  const millimeters = await recalculatedQuote(changesToMillimeters());

  it('has a stamp in mm', () => {
    const cells = readSheetValues(millimeters.bytes, 'Shop').flat().map(shown);
    expect(cells.find((cell) => cell.includes(' presses · '))).toMatch(/^mm · 2 presses · /);
  });

  it.each([
    ['Verdict', 1],
    ['Share of rating', 1],
    ['Hits', 1],
    ['Route', 1],
    ['Minutes', 1],
    ['Cost', 1],
    ['Force', 1000 / newtonPerPoundForce / 2000],
    ['Mass', Qty(1, 'kg').to('lb').scalar],
  ])('gives the same %s in every row', (column, per) => {
    expect(differences(inches, millimeters, column, per)).toEqual([]);
  });

  it('changed enough cells to be another workbook', () => {
    expect(changesToMillimeters().length).toBeGreaterThan(150);
  });
});
