import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { cards } from '../../src/headless/index.js';
import { exampleBook } from '../support/exampleCards.js';

const quote = path.join(root, 'examples/quote.xlsx');
let folder: string;
beforeEach(() => void (folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-cards-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function run(...argv: string[]) {
  let [out, err] = ['', ''];
  const code = await cards(
    argv,
    {
      out: (text) => (out += text),
      err: (text) => (err += text),
      folder: path.join(root, 'dist'),
      input: () => Promise.resolve(undefined),
    },
    new Date(2026, 10, 29),
  );
  return { code, out, err };
}
const target = () => path.join(folder, 'cards.html');
const written = () => readFileSync(target(), 'utf8');

describe('cards', () => {
  it('writes a card for every row that can be made, names the others, and exits with 0', async () => {
    const { code, out, err } = await run(quote, target());
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('BP5  Too big');
    expect(out).toContain(`Written to ${target()}.`);
    expect(Number.parseInt(out, 10)).toBe(written().match(/<section class="card/g)?.length);
    expect(written()).toContain('November 29, 2026');
    expect(written()).toContain('quote.xlsx');
  });

  it('writes the cards of a press', async () => {
    const { out } = await run(quote, target(), '--press', 'bay b');
    expect(Number.parseInt(out, 10)).toBeGreaterThan(5);
    expect(written()).not.toContain('Cuts at the back gauge, Bay A');
    expect(written()).toContain('Cuts at the back gauge, Bay B');
  });

  it('writes the cards of marks, and exits with 3 where one has reasons instead of steps', async () => {
    expect((await run(quote, target(), '--marks', 'BP1, CL1')).code).toBe(0);
    const { code, out } = await run(quote, target(), '--marks', 'BP1,BP5');
    expect(code).toBe(3);
    expect(out).toContain('1 with reasons instead of steps');
    expect(written()).toContain('Too big');
  });

  it('refuses what is not there, in one sentence, and writes nothing', async () => {
    expect(await run(quote, target(), '--marks', 'BP1,XX')).toMatchObject({
      code: 1,
      err: "No row has the mark 'XX'.\n",
    });
    expect((await run(quote, target(), '--press', 'Bay Q')).err).toBe(
      "The shop has no press 'Bay Q': it has Bay A, Bay B.\n",
    );
    expect((await run(path.join(folder, 'none.xlsx'), target())).err).toMatch(/does not exist\.\n$/);
    expect((await run(quote, quote)).err).toContain('is the workbook itself');
    expect(() => written()).toThrow('ENOENT');
  });

  it('says how it is called', async () => {
    for (const argv of [[], [quote], [quote, target(), 'more'], [quote, target(), '--marks', ','], ['--odd']])
      expect((await run(...argv)).code).toBe(2);
  });
});

describe('a workbook file as cards read it', () => {
  it('has the formula of the shop and the tables it names, without total rows', () => {
    const book = exampleBook();
    expect(book.stampFormula).toMatch(/^=.*SHOP\(/);
    expect(book.cells({ kind: 'table', name: 'presses' })?.[0]?.slice(0, 2)).toEqual(['Item', 'Unit']);
    expect(book.cells({ kind: 'table', name: 'Missing' })).toBeUndefined();
    expect(book.cells({ kind: 'cells', sheet: 'Shop', address: '$B$4' })?.[0]?.[0]).toMatch(/rules/);
    expect(book.cells({ kind: 'name', name: 'ShopStamp' })?.[0]?.[0]).toMatch(/rules/);
  });
});
