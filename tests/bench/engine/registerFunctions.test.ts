import '../support/engineOnNode.js';
import { describe, expect, it } from 'vitest';
import { GridBook } from '../../../src/bench/book/gridBook.js';
import { registerFunctions } from '../../../src/bench/engine/registerFunctions.js';
import type {
  CustomFunction,
  LoadedFunction,
  LoadedFunctions,
} from '../../../src/headless/functions/scriptHost.js';

const any = { type: 'any', dimensionality: 'scalar' } as const;
let books: GridBook[] = [];

const one = (name: string, matrix: boolean, call: CustomFunction): [string, LoadedFunction] => [
  name,
  {
    metadata: {
      id: name,
      name,
      parameters: [{ name: 'first', ...any, ...(matrix && { dimensionality: 'matrix' as const }) }],
    },
    call,
  },
];

const loaded: LoadedFunctions = {
  namespace: 'TEST',
  allowErrors: true,
  byName: new Map([
    one('LATER', false, async (value) => `came ${String(value)}`),
    one('FAILS', false, () => {
      throw { code: '#N/A', message: 'No such thing. Write another.' };
    }),
    one('BREAKS', false, () => {
      throw new Error('broken');
    }),
    one('TWICE', true, (rows) => (rows as number[][]).map((row) => row.map((value) => value * 2))),
    one('SEES', false, (value) => JSON.stringify(value)),
  ]),
};
registerFunctions(loaded, new Map(), () => {
  for (const book of books) book.model.dispatch('EVALUATE_CELLS');
});

/** A sheet with these cells. */
function sheet(cells: Record<string, string>): (row: number, column: number) => unknown[] {
  const book = new GridBook({
    data: { sheets: [{ id: 's', name: 'S', cells }] },
    sheets: [{ sheetId: 's', name: 'S' }],
    tables: [],
    names: [],
    namespace: 'TEST',
    ours: new Set(loaded.byName.keys()),
  });
  books = [book];
  return (row, col) => {
    const { message } = book.getters.getEvaluatedCell({ sheetId: 's', row, col });
    const value = book.value({ sheetId: 's', row, col });
    return message === undefined ? [value] : [value, String(message)];
  };
}

describe('our functions in the grid', () => {
  it('give an answer that comes later, to the cell and to what hangs on it', async () => {
    const at = sheet({ A1: '=TEST.LATER(7)', A2: '=A1&"!"' });
    expect(at(0, 0)).toEqual(['#GETTING_DATA', 'The answer comes in a moment.']);
    expect(at(1, 0)[0]).toBe('#GETTING_DATA');
    await expect.poll(() => at(0, 0)).toEqual(['came 7']);
    expect(at(1, 0)).toEqual(['came 7!']);
  });

  it('show their error with its sentence, also where it is passed on', () => {
    const at = sheet({ A1: '=TEST.FAILS(1)', A2: '=A1+1' });
    expect(at(0, 0)).toEqual(['#N/A', 'No such thing. Write another.']);
    expect(at(1, 0)).toEqual(['#N/A', 'No such thing. Write another.']);
  });

  it('say so when they break', () => {
    expect(sheet({ A1: '=TEST.BREAKS(1)' })(0, 0)).toEqual(['#VALUE!', 'BREAKS failed: broken']);
  });

  it('spill arrays and take ranges', () => {
    const at = sheet({ A1: '1', A2: '2', B1: '3', B2: '4', D1: '=TEST.TWICE(A1:B2)' });
    expect([at(0, 3), at(1, 3), at(0, 4), at(1, 4)]).toEqual([[2], [4], [6], [8]]);
  });

  it('see errors by the codes that spreadsheets have', () => {
    const at = sheet({ A1: '=1/0', A2: '=TEST.SEES(A1)', A3: '=TEST.SEES(#REF)', A4: '=TEST.SEES(A9)' });
    expect(at(1, 0)[0]).toContain('"code":"#DIV/0!"');
    expect(at(2, 0)[0]).toContain('"code":"#REF!"');
    expect(at(3, 0)).toEqual(['null']);
  });
});
