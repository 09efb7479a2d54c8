import { zoneAddress, type Zone } from '../../../sheet/address.js';
import { withChild } from '../parts/childElements.js';
import { sheetOrder } from '../parts/sheetOrder.js';

/** A sheet's part with its merged areas, where they were changed. */
export function withMerges(xml: string, before: readonly Zone[], now: readonly Zone[]): string {
  const addresses = (zones: readonly Zone[]) => zones.map(zoneAddress);
  const [was, is] = [new Set(addresses(before)), addresses(now)];
  if (was.size === is.length && is.every((address) => was.has(address))) return xml;
  const inner = is.map((address) => `<mergeCell ref="${address}"/>`).join('');
  const list = inner && `<mergeCells count="${is.length}">${inner}</mergeCells>`;
  return withChild(xml, 'mergeCells', list || undefined, sheetOrder);
}
