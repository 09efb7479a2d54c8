import type { LoadedFunction, LoadedFunctions } from '../../src/headless/index.js';
import { tried } from './functionCalls.js';
import type { FuzzKind } from './kind.js';
import { fuzzCell, type FuzzCell, fuzzText } from './values.js';

/** A parts list of a workbook: headings, and rows that are right. */
interface SampleList {
  headings: readonly string[];
  rows: readonly (readonly FuzzCell[])[];
}

const more = [
  'Hole 2', 'Holes 2', 'Edge 2', 'End 2', 'Pitch 2', 'Gage 2', 'Leg', 'Bend', 'Notch', 'Clip corners', 'Process', 'Cut by',
  'Length (ft)', 'Length (mm)', 'Hole (mm)', 'Slot direction', 'Miter leg', 'Finish', 'Job spec', 'Thickness', 'Width', 'Size',
  'Bohrung', 'e1', 'p1', 'Dia', 'Qty', 'Mark', 'toString', '__proto__', '', ' ',
] as const; // prettier-ignore

/** Rows and lists: true rows with cells changed, headings moved, added and misspelled. */
export function rowCalls(functions: LoadedFunctions, list: SampleList, stamp: string): FuzzKind {
  const texts = list.rows.flat().filter((cell) => typeof cell === 'string');
  return {
    name: 'rows',
    async call(random, keep) {
      const headings: string[] = [...list.headings];
      const rows = Array.from({ length: random.chance(0.7) ? 1 : random.below(6) }, () => [
        ...random.pick(list.rows),
      ]);
      for (const heading of random.times(6, () =>
        random.chance(0.8) ? random.pick(more) : fuzzText(random),
      )) {
        headings.push(heading);
        for (const row of rows) row.push(fuzzCell(random, texts));
      }
      for (const row of rows)
        for (let at = 0; at < row.length; at++) if (random.chance(0.12)) row[at] = fuzzCell(random, texts);
      if (random.chance(0.1)) headings.splice(random.below(headings.length), 1, fuzzText(random));
      const isList = rows.length !== 1 || random.chance(0.1);
      const name = isList ? 'LISTCHECK' : 'ROWCHECK';
      const item = random.chance(0.7)
        ? null
        : random.pick(['verdict', 'note', 'minutes', 'cost', 'mass', 'basis', 'x']);
      const args = isList ? [[headings, ...rows], stamp, item] : [[headings], rows, stamp, item];
      keep([name, args]);
      return await tried(name, functions.byName.get(name) as LoadedFunction, args);
    },
  };
}
