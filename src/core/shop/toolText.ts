import type { LengthUnit } from '../quantity/units.js';
import { describeHole } from '../tooling/hole.js';
import type { Tool } from './readTools.js';

/** A tool as it stands in the table, a bare number as every size of the shop: `Ø13/16`, `slot 21 mm × 48 mm`. */
export function toolText({ written, size }: Pick<Tool, 'written' | 'size'>, unit: LengthUnit): string {
  return written ?? describeHole(size, unit);
}
