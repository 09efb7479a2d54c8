import { expect, it } from 'vitest';
import { isInvented } from '../../../src/core/press/isInvented.js';
import { shopWith } from '../../support/sampleShop.js';

it.each([
  ['yes', true],
  [' YES', true],
  ['no', false],
  [null, false],
])('a press whose row Invented says %o is invented: %o', (cell, invented) => {
  expect(shopWith({ Invented: cell }).presses.map(isInvented)).toEqual([invented]);
});

it('a press is not invented where there is no such row', () => {
  expect(shopWith().presses.map(isInvented)).toEqual([false]);
});
