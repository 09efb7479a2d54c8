import { boltHole, type BoltHole, type HoleFit } from '../../rule/boltHole.js';
import type { BoltSize } from '../../rule/boltSize.js';
import type { AnySection } from '../../section/section.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import type { Hole } from '../../tooling/hole.js';
import type { Column } from '../headings/readHeadings.js';
import type { RowReader } from '../headings/rowReader.js';

/** The hole for a bolt by the shop's code; a bolt its table lacks is a problem of the row. */
export function tabledHole(
  reader: RowReader,
  bolt: BoltSize,
  column: Column | undefined,
  shop: Shop,
  fit?: HoleFit,
): BoltHole | undefined {
  return reader.read(column, () => {
    const code = setting(shop, 'edgeCode') === 'EN' ? 'EN' : 'AISC';
    return boltHole({ bolt, fit: fit ?? setting(shop, 'holeFit'), code });
  });
}

/** The hole of a bolt in the shop's own fit. */
export function boltHoleOf(
  reader: RowReader,
  bolt: BoltSize,
  column: Column | undefined,
  shop: Shop,
): Hole | undefined {
  const size = tabledHole(reader, bolt, column, shop);
  if (!size) return undefined;
  const { widthMm, lengthMm } = size;
  return lengthMm === undefined
    ? { shape: 'round', diameterMm: widthMm }
    : { shape: 'slot', widthMm, lengthMm };
}

/** Holes in solid bars and in what is sawn are drilled: no table is asked for their bolts. */
export function isPunchable(section: AnySection | undefined): boolean {
  return section === undefined || ['flat', 'angle', 'channel'].includes(section.kind);
}
