import { megapascalPerKsi } from './units.js';

/** MPa in one of each unit of stress, by its name in lower case. */
export const megapascalPer: ReadonlyMap<string, number> = new Map([
  ['mpa', 1],
  ['n/mm2', 1],
  ['n/mm²', 1],
  ['ksi', megapascalPerKsi],
  ['psi', megapascalPerKsi / 1000],
]);
