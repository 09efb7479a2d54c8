import type { PressItem } from '../../../core/press/item/pressItem.js';

/** The words of items that are chosen and not typed. */
export const choices: Partial<Record<PressItem['kind'], readonly string[]>> = {
  station: ['yes', 'no'],
  yesNo: ['yes', 'no'],
  legs: ['one', 'both', 'no'],
  legPosition: ['down', 'up', 'both'],
};
