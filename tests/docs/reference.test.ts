import { readFileSync } from 'node:fs';
import path from 'node:path';
import prettier from 'prettier';
import { beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { shownResult } from '../../scripts/reference/functions.mjs';
import { exampleResults, formatted, generatedPages } from '../../scripts/reference/pages.mjs';
import * as sources from '../../scripts/reference/sources.js';
import { calc, type FormulaResult } from '../../src/headless/index.js';
import '../contract/support/built.js';

const docs = path.join(root, 'docs');
const page = (name: string) => readFileSync(path.join(docs, name), 'utf8');
const { catalog } = sources;

let results: Record<string, FormulaResult>;

beforeAll(async () => {
  const quote = path.join(root, 'examples/quote.xlsx');
  results = await exampleResults(calc, sources, quote, path.join(root, 'dist'));
});

/** The part of the reference about one function. */
const sectionOf = (name: string) =>
  page('reference.md')
    .split(/^## /m)
    .find((part) => part.startsWith(`${name}\n`)) ?? '';

describe('the function reference', () => {
  it.each(['reference.md', 'notation.md', 'headings.md', 'shop-sheet.md'])(
    '%s is what npm run reference writes',
    async (name) => {
      const pages = generatedPages(sources, results) as Record<string, string>;
      expect(page(name)).toBe(await formatted(pages[name], prettier, root));
    },
  );

  it.each(catalog.map(({ name, example }) => [name, example]))('%s: the example %s runs', (name, example) => {
    const result = results[name];
    expect(result && 'error' in result ? result.error : undefined).toBeUndefined();
    const text = shownResult(result) as string;
    expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object|#(?:VALUE|N\/A|NAME|REF|NUM)/);
    expect(text.length).toBeGreaterThan(0);
    expect(sectionOf(name)).toContain(`\`\`\`text\n${example}\n${text}\n\`\`\``);
  });

  it.each(catalog)('$name has its purpose, every argument, result, errors and source', (descriptor) => {
    const section = sectionOf(descriptor.name);
    expect(section).toContain(descriptor.purpose);
    for (const argument of Object.keys(descriptor.arguments)) expect(section).toContain(`| \`${argument}\``);
    for (const label of ['Result', 'Errors', 'Source']) {
      const [, text = ''] = new RegExp(`^\\*\\*${label}\\.\\*\\* (.+)$`, 'm').exec(section) ?? [];
      expect(text.length, label).toBeGreaterThan(5);
    }
    for (const { choices = [] } of Object.values(descriptor.arguments)) {
      for (const { value } of choices) expect(section).toContain(`- \`${value}\`: `);
    }
  });

  it('names the unit of every quantity', () => {
    const measured = catalog.filter(({ result }) =>
      ['length', 'area', 'surface', 'force', 'mass'].includes(result),
    );
    expect(measured.length).toBeGreaterThan(8);
    for (const { name } of measured) {
      const [, text] = /^\*\*Result\.\*\* (.+)$/m.exec(sectionOf(name)) ?? [];
      expect(text, name).toMatch(/\b(?:mm|kN|kg|m²|mm²)(?![a-z])/);
    }
  });
});
