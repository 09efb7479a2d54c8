import type { Working } from '../working/working.js';

/** Where holes are laid out evenly. */
export const layoutSource = 'common practice, no source';

/** The last step of a layout: how many holes it has. */
export function holeCountStep(count: number, working?: Working): void {
  working?.step({
    title: 'Holes',
    formula: 'n',
    values: [],
    result: { symbol: 'n', meaning: 'holes laid out', kind: 'count', value: count },
    source: layoutSource,
  });
}
