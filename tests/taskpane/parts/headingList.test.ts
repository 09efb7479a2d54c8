import { expect, it } from 'vitest';
import { allHeadings, headingsLike } from '../../../src/taskpane/parts/list/headingList.js';

const names = (text: string) => headingsLike(text).map(({ name }) => name);

it('all headings are there until something is asked for', () => {
  expect(headingsLike('  ')).toHaveLength(allHeadings.length);
});

it.each([
  ['Pitch', 'Pitch'],
  ['bohrung', 'Hole'],
  ['e1', 'End'],
  ['heel of a leg', 'Gage'],
])('%s finds %s first', (text, name) => {
  expect(names(text)[0]).toBe(name);
});

it('nothing is found for a word of no heading', () => {
  expect(names('paint shop')).toEqual([]);
});

it('each has a meaning, and no two one name', () => {
  expect(allHeadings.every(({ meaning }) => meaning.length > 3)).toBe(true);
  expect(new Set(allHeadings.map(({ name }) => name)).size).toBe(allHeadings.length);
});
