import { expect, it } from 'vitest';
import { hiddenRowSentences } from '../../../src/core/say/hiddenRows.js';

it('hidden rows are counted and named by their numbers', () => {
  expect(hiddenRowSentences([14, 15, 16], 'checked')).toEqual(['3 hidden rows are checked too: 14–16.']);
  expect(hiddenRowSentences([9], 'left out')).toEqual(['1 hidden row is left out: 9.']);
  expect(hiddenRowSentences([], 'planned')).toEqual([]);
});
