import '../support/engineOnNode.js';
import { describe, expect, it } from 'vitest';
import { RememberedCalls } from '../../../src/bench/engine/rememberedCalls.js';
import { OurFunctions } from '../../../src/headless/engine/ourFunctions.js';
import type { Matrix, Operand } from '../../../src/headless/engine/values.js';
import type { CustomFunction, LoadedFunction } from '../../../src/headless/functions/scriptHost.js';
import { functions, openExample } from '../support/openExample.js';

/** A counted function: a matrix, then a scalar. */
function counted(name: string, answer: CustomFunction) {
  const calls: unknown[][] = [];
  const one: LoadedFunction = {
    metadata: {
      id: name,
      name,
      parameters: [
        { name: 'list', type: 'any', dimensionality: 'matrix' },
        { name: 'other', type: 'any', dimensionality: 'scalar' },
      ],
    },
    call: (...args) => {
      calls.push(args.slice(0, 2));
      return answer(...args);
    },
  };
  const loaded = { namespace: 'TEST', allowErrors: true, byName: new Map([[name, one]]) };
  const remembered = new RememberedCalls(new OurFunctions(loaded));
  const call = (rows: (string | number)[][], other: string) =>
    remembered.call(one, [matrix(rows), { value: other }]);
  return { calls, call };
}

/** Rows as the engine has them: column by column. */
const matrix = (rows: readonly (readonly (string | number | null)[])[]): Matrix =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => ({ value: row[column] ?? null })));

const rowsOf = (result: Operand): unknown[][] =>
  Array.isArray(result)
    ? (result[0] ?? []).map((_, row) => result.map((column) => column[row]?.value))
    : [[result.value]];

describe('a call that is asked again', () => {
  it('is answered from memory, and only for the same arguments', () => {
    const { calls, call } = counted('ANY', (list, other) => `${JSON.stringify(list)} ${String(other)}`);
    const first = call([[1, 'a']], 'x');
    expect(call([[1, 'a']], 'x')).toEqual(first);
    expect(calls).toHaveLength(1);
    expect(call([['1', 'a']], 'x')).not.toEqual(first);
    call([[1, 'a']], 'y');
    expect(calls).toHaveLength(3);
  });

  it('is made again after an error', () => {
    let answer: unknown = 'ready';
    const { calls, call } = counted('ANY', () => {
      if (answer === 'ready') return answer;
      throw answer;
    });
    answer = { code: '#N/A', message: 'Not read yet.' };
    expect(rowsOf(call([[1]], 'x'))).toEqual([['#N/A']]);
    answer = 'ready';
    expect(rowsOf(call([[1]], 'x'))).toEqual([['ready']]);
    expect(calls).toHaveLength(2);
  });
});

describe('a list that is checked again', () => {
  const answer: CustomFunction = (list, other) => {
    const [, ...rows] = list as string[][];
    return [['Says'], ...rows.map(([mark]) => [`${String(mark)} ${String(other)}`])];
  };
  const list = [['Mark'], ['C1'], ['C2'], ['C1']];

  it('has only its new rows worked out', () => {
    const { calls, call } = counted('LISTCHECK', answer);
    expect(rowsOf(call(list, 'x'))).toEqual([['Says'], ['C1 x'], ['C2 x'], ['C1 x']]);
    expect(rowsOf(call([['Mark'], ['C2'], ['C3'], ['C1']], 'x'))).toEqual([
      ['Says'],
      ['C2 x'],
      ['C3 x'],
      ['C1 x'],
    ]);
    expect(rowsOf(call([['Mark'], ['C3']], 'x'))).toEqual([['Says'], ['C3 x']]);
    expect(calls.slice(1)).toEqual([[[['Mark'], ['C3']], 'x']]);
  });

  it('is worked out anew for another shop or other headings', () => {
    const { calls, call } = counted('LISTCHECK', answer);
    call(list, 'x');
    expect(rowsOf(call(list, 'y'))[1]).toEqual(['C1 y']);
    call([['Piece'], ['C1']], 'x');
    expect(calls.map(([rows]) => (rows as unknown[]).length)).toEqual([4, 4, 2]);
  });

  it('has an error as a whole, as often as it is asked', () => {
    const { calls, call } = counted('LISTCHECK', () => {
      throw { code: '#VALUE!', message: 'No Section column.' };
    });
    expect(rowsOf(call(list, 'x'))).toEqual([['#VALUE!']]);
    expect(rowsOf(call(list, 'x'))).toEqual([['#VALUE!']]);
    expect(calls).toHaveLength(2);
  });

  it('comes out as the function alone says, whatever row changes', async () => {
    const { book } = openExample();
    const table = book.tables.find('Parts');
    const one = functions.byName.get('LISTCHECK');
    if (!table || !one) throw new Error('the example has no list');
    const { sheetId, zone } = table;
    const rows = Array.from({ length: zone.bottom - zone.top + 1 }, (_, row) =>
      Array.from({ length: 17 }, (__, col) => {
        const value = book.value({ sheetId, row: zone.top + row, col });
        return typeof value === 'boolean' ? String(value) : value;
      }),
    );
    const stamp = book.value({ sheetId: book.sheetIdOf('Quote') as string, row: 2, col: 4 });
    const ours = new OurFunctions(functions);
    const remembered = new RememberedCalls(ours);
    for (const at of [0, 3, 17, 40]) {
      const changed = rows.map((row, index) =>
        index === at && at > 0 ? [...row.slice(0, 6), '2', ...row.slice(7)] : row,
      );
      const operands = [matrix(changed), { value: stamp }, { value: 'verdict, use, note' }];
      const whole = rowsOf(ours.call(one, operands));
      expect(rowsOf(remembered.call(one, operands))).toEqual(whole);
      expect(whole).toHaveLength(rows.length);
      expect(new Set(whole.map(([verdict]) => verdict)).size).toBeGreaterThan(5);
    }
  });
});
