// @vitest-environment node
// A slice of `npm run fuzz`: the same calls in every run, some seconds of them.
import { expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { fuzzKinds } from '../../scripts/fuzz/fuzzKinds.js';
import { Random } from '../../scripts/fuzz/random.js';
import '../contract/support/built.js';

const calls: Record<string, number> = { functions: 800, rows: 100, packages: 40, formulas: 200, copies: 60 };
const seed = Number(process.env.SEED ?? 1);

it('nothing crashes, gives what no cell shows, or changes its source', async () => {
  const kinds = await fuzzKinds(root);
  expect(kinds.map(({ name }) => name)).toEqual(Object.keys(calls));
  const finds: string[] = [];
  for (const { name, call } of kinds)
    for (let at = 0; at < (calls[name] ?? 0); at++) {
      const find = await call(new Random(seed, name, at), () => {});
      if (find !== undefined) finds.push(`${name} --seed ${seed} --at ${at}: ${find}`);
    }
  expect(finds).toEqual([]);
});

it('one seed gives one sequence, and each call its own', async () => {
  const [functions] = await fuzzKinds(root);
  const inputs = async (from: number, of: number) => {
    const kept: unknown[] = [];
    for (let at = 0; at < 5; at++)
      await functions?.call(new Random(of, 'functions', from + at), (input) => kept.push(input));
    return JSON.stringify(kept);
  };
  expect(await inputs(0, 1)).toBe(await inputs(0, 1));
  expect(await inputs(0, 1)).not.toBe(await inputs(0, 2));
  expect(await inputs(0, 1)).not.toBe(await inputs(5, 1));
});
