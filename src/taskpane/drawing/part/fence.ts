import type { Fence } from '../../../core/row/outline/fence.js';

/** How a leg or a flange lies; nothing to say of an edge. */
export function lyingWords({ side, edge }: Fence): string[] {
  return side === 'operator' ? [`${edge} at the fence, toe into the throat`] : [];
}
