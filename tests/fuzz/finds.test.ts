// @vitest-environment node
// What `npm run fuzz` found, each as the call that showed it, and the calls of its class.
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { tried } from '../../scripts/fuzz/functionCalls.js';
import '../contract/support/built.js';
import { builtFunctions, FormulaCalculator, type LoadedFunctions } from '../../src/headless/index.js';

let functions: LoadedFunctions;
let stamp: string;

beforeAll(async () => {
  functions = await builtFunctions(path.join(root, 'dist'));
  const shop = functions.byName.get('SHOP')?.call([
    ['Item', 'Unit', 'Bay A'],
    ['Punch force', 'US ton', 55],
    ['Punch', null, 'yes'],
  ]);
  stamp = String(shop);
});

/** Names that every object of the language has: a table of words must not take them for its own. */
const inherited = ['constructor', 'toString', 'valueOf', 'hasOwnProperty', '__proto__'];

describe('names that every object has', () => {
  const headings = [
    ...['Mark', 'Qty', 'Grade', 'Length', 'Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Edge kind', 'Pitch', 'Gage', 'Leg', 'Press'],
    ...['Miter left', 'Miter right', 'Miter leg', 'Bend', 'Notch', 'Clip corners', 'Process', 'Cut by', 'Slot direction', 'Finish'],
  ]; // prettier-ignore

  it.each(inherited)('%s is no word in any column of a row', async (word) => {
    const check = functions.byName.get('ROWCHECK');
    if (!check) throw new Error('There is no ROWCHECK.');
    for (const section of ['L2X2X1/4', 'FB 3/8x4', word])
      for (const heading of headings)
        expect(
          await tried('ROWCHECK', check, [[['Section', heading]], [[section, word]], stamp, null]),
        ).toBeUndefined();
  });

  it.each(inherited)('%s is no value of any argument', async (word) => {
    for (const [name, known] of functions.byName) {
      if (name.startsWith('STOCK')) continue;
      const { parameters } = known.metadata;
      for (let at = 0; at < parameters.length; at++) {
        const args = parameters.map(({ dimensionality }, position) => {
          const value = position === at ? word : '1/2';
          return dimensionality === 'matrix' ? [[value, value]] : value;
        });
        expect([name, await tried(name, known, args)]).toEqual([name, undefined]);
      }
    }
  });
});

describe('formulas that cannot be read', () => {
  it.each([
    ['={1,2;3,4', 'The formula ends too early.'],
    ['=@FD1>{048576', 'The formula ends too early.'],
    ['={1,2)', 'The formula cannot be read at ")".'],
    ['={', 'The formula ends too early.'],
    ['=[1]S!', 'The formula ends too early.'],
    ['=SUM([1]S!A1:', 'The formula ends too early.'],
    ['=S!', 'The formula ends too early.'],
    ['=First:Last!', 'The formula ends too early.'],
    ['=A1:', 'The formula ends too early.'],
    ['=1E3000', 'The formula cannot be read at "1E3000".'],
  ])(
    '%s: an array that is not closed, a reference that ends early, a number that no cell holds',
    async (text, message) => {
      const desk = await FormulaCalculator.over(undefined, functions);
      expect(await desk.evaluate(text)).toEqual({ error: { code: '#NAME?', message } });
    },
  );
});
