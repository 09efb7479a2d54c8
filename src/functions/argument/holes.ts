import { refuse } from '../../core/inputError.js';
import { type CellValue, isBlank } from '../../core/quantity/cellValue.js';
import { readLength } from '../../core/quantity/readLength.js';
import type { ListedHole } from '../../core/setup/requireHoles.js';
import type { MatrixArgument, ReadContext } from './argument.js';

const allowed = 'Give two columns without headings, x and y of one hole in each row.';
/** More are a slip of the range. */
const mostHoles = 1000;

/** Centers of holes, x and y in two columns; blank rows are left out. */
export function holesArgument(meaning: string): MatrixArgument<ListedHole[]> {
  return {
    kind: 'holes',
    meaning,
    dimensionality: 'matrix',
    optional: false,
    read: (cells, context) => {
      const { argument } = context;
      const holes = (cells ?? []).flatMap((row, at) => holeOf(row, at + 1, context));
      if (holes.length === 0) return refuse(argument, '', 'no holes were given.', allowed);
      if (holes.length <= mostHoles) return holes;
      return refuse(argument, '', `${holes.length} holes were given.`, `Give at most ${mostHoles}.`);
    },
  };
}

function holeOf(cells: readonly CellValue[], row: number, { argument, unit }: ReadContext): ListedHole[] {
  const [x = null, y = null] = cells;
  if (cells.length !== 2) {
    const columns = cells.length === 1 ? '1 column was' : `${cells.length} columns were`;
    return refuse(argument, '', `${columns} given.`, allowed);
  }
  if (isBlank(x) && isBlank(y)) return [];
  for (const [name, value] of [
    ['x', x],
    ['y', y],
  ] as const) {
    if (isBlank(value)) {
      const problem = `row ${row} has no ${name} (0 is read as a blank cell).`;
      return refuse(argument, '', problem, allowed);
    }
  }
  return [
    {
      x: readLength(x, `${argument}, row ${row}, x`, unit, 'length'),
      y: readLength(y, `${argument}, row ${row}, y`, unit, 'distance'),
      row,
    },
  ];
}
