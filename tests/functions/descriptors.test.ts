import { describe, expect, it } from 'vitest';
import { readShop } from '../../src/core/shop/readShop.js';
import { argumentLabel } from '../../src/functions/argument/argument.js';
import { catalog, namespace } from '../../src/functions/catalog.js';
import { readExample } from '../support/exampleCall.js';
import { shopTables } from '../support/sampleShop.js';
import { SheetRuntime } from '../support/sheetRuntime.js';

const named = catalog.map((descriptor) => [descriptor.name, descriptor] as const);
const longestDescription = 128;
const shop = readShop(shopTables());

describe.each(named)('the description of %s', (name, descriptor) => {
  const { purpose, gives, source, errors, example } = descriptor;
  const described = Object.entries(descriptor.arguments);

  it('says what it gives, and where that comes from, in lines the host shows whole', () => {
    for (const text of [purpose, gives, source]) expect(text.trim().length).toBeGreaterThan(10);
    expect(purpose.length).toBeLessThanOrEqual(longestDescription);
    expect(purpose).toMatch(/^\p{Lu}.*[^.]$/u);
    expect(gives).toMatch(/\.$/);
    expect(errors).toMatch(/^$|\.$/);
  });

  it('says what each argument is, and what an omitted one stands for', () => {
    for (const [argument, { meaning, kind, optional, omitted }] of described) {
      expect(argument).toMatch(/^[a-z][a-zA-Z]*$/);
      expect(argumentLabel(argument)).toMatch(/^[A-Z][a-z ]*$/);
      expect(meaning.length, argument).toBeGreaterThan(5);
      expect(meaning.length, argument).toBeLessThanOrEqual(longestDescription);
      expect(kind).not.toBe('');
      expect((omitted ?? '') !== '', `${argument} says what it is when left out`).toBe(optional);
    }
  });

  it('has required arguments first, then the shop, then options', () => {
    const optional = described.map(([, argument]) => argument.optional);
    expect(optional).toEqual([...optional].sort());
    const at = described.findIndex(([argument]) => argument === 'shop');
    if (at < 0) return;
    expect(described.slice(0, at).every(([, argument]) => !argument.optional)).toBe(true);
    expect(described.slice(at + 1).every(([, argument]) => argument.optional)).toBe(true);
  });

  it('has choices with different words, each with a meaning', () => {
    for (const [, { choices }] of described) {
      if (!choices) continue;
      const words = choices.map(({ value }) => value.toLowerCase());
      expect(new Set(words).size).toBe(words.length);
      for (const { meaning } of choices) expect(meaning.length).toBeGreaterThan(3);
    }
  });

  it('has an example that runs', async () => {
    const call = readExample(example, shop.stamp);
    expect(call.name).toBe(name);
    const result = await new SheetRuntime(shop).call(call.name, ...call.inputs);
    expect(JSON.stringify(result)).not.toMatch(/null|Check input/);
  });
});

describe('the catalog', () => {
  it('has different names without dots, under one namespace', () => {
    const names = catalog.map(({ name }) => name);
    expect(namespace).toBe('TONROW');
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[A-Z]{3,20}$/);
  });

  it('labels an argument as people read it', () => {
    expect(argumentLabel('punchShear')).toBe('Punch shear');
    expect(argumentLabel('hole')).toBe('Hole');
  });
});
