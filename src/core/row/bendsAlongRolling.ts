import type { ReadyRow } from './job/readyRow.js';

type Bent = Pick<ReadyRow, 'section' | 'stock' | 'bends'>;

/**
 * Whether a bend of the row runs along the rolling direction, where it may crack sooner. Bars are rolled along their length;
 * of a plate the row does not say how it was rolled, nor of bends that are not placed how they run: undefined. Common
 * practice, no source.
 */
export function bendsAlongRolling({ section, stock, bends }: Bent): boolean | undefined {
  if (!bends?.at || section.kind !== 'flat') return undefined;
  if (section.form !== 'bar' && stock !== 'from bar') return undefined;
  return bends.at.some(({ at }) => at === 'edge');
}
