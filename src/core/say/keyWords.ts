import type { StepNote } from '../work/operatorStep.js';

/** How punch and die of a hole that is not round are keyed: which way it is long, as the list has it. */
export function keyWords({ long, way }: Extract<StepNote, { is: 'key the shape' }>): string {
  const keyed = 'Key punch and die to the same direction';
  if (!long) return `${keyed}.`;
  switch (way) {
    case undefined:
      return `${keyed}. The list does not say which way the ${long} lies: ask before punching.`;
    case 'both':
      return `${keyed}: some run along the part, some across it; key both again between them.`;
    default:
      return `${keyed}: the ${long} runs ${way} the part.`;
  }
}
