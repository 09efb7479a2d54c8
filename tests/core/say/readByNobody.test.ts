import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../../scripts/ensure.mjs';

const source = path.join(root, 'src');
const texts = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name) && !name.startsWith(path.join('core', 'say')))
  .map((name) => ({ name, text: readFileSync(path.join(source, name), 'utf8') }));

/** Reading a text: by a pattern, by how it begins or ends. */
const reads = /\.(?:test|exec|match|matchAll|search|startsWith|endsWith)\(/;
/** A sentence or a few words that are made in core/say. */
const says = /from '[./]*core\/say\/|from '\.\.\/say\//;

it('sentences are made in one place and read in none', () => {
  const saying = texts.filter(({ text }) => says.test(text));
  expect(saying.length).toBeGreaterThan(5);
  expect(saying.filter(({ text }) => reads.test(text)).map(({ name }) => name)).toEqual([]);
});

it('nothing looks for a note or for what governs in a text', () => {
  const looking = texts.filter(({ text }) => new RegExp(`\\.(?:note|governs)\\)?${reads.source}`).test(text));
  expect(looking.map(({ name }) => name)).toEqual([]);
});
