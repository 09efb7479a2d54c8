import type { Finding } from '../check/finding.js';
import { limitOf, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { isCutBySaw } from '../press/shearStation.js';
import { forSection } from '../shop/bySection.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { isCutElsewhere } from './job/needsPress.js';
import type { ReadyRow } from './job/readyRow.js';

/**
 * Whether the supports of a press carry the part, its length and its mass: at the shear the whole bar that it is cut
 * from, where the shop says how long its bars are.
 */
export function supportFindings(press: Press, row: ReadyRow, shop: Shop, working?: Working): Finding[] {
  const { lengthMm, massKg, typed } = row;
  if (lengthMm === undefined) return [withoutLength(press)];
  const barMm = barAtShearMm(row, shop);
  const isBar = barMm !== undefined && barMm > lengthMm;
  const as = typed?.length === undefined ? {} : { typed: typed.length };
  const length = withinLimit(
    press,
    isBar
      ? { item: 'longestBar', sized: { is: 'bar' }, given: barMm }
      : { item: 'longestBar', sized: { is: 'part', ...as }, given: lengthMm },
    working,
  );
  if (massKg === undefined) return [length];
  const mass = isBar
    ? ({ sized: { is: 'bar mass' }, given: (massKg / lengthMm) * barMm } as const)
    : ({ sized: { is: 'mass' }, given: massKg } as const);
  return [length, withinLimit(press, { item: 'heaviestBar', ...mass }, working)];
}

/** The bar that lies at the shear; undefined where no press cuts the part, or nobody says how long the bars are. */
function barAtShearMm(row: ReadyRow, shop: Shop): number | undefined {
  const { section, stock } = row;
  if (isCutBySaw(section) || isCutElsewhere(row)) return undefined;
  if (section.kind === 'flat' && section.form === 'plate' && stock !== 'from bar') return undefined;
  return forSection(setting(shop, 'barLengths'), section.designation);
}

/** Without a length a part may be too long or too heavy, unless the press has no such limit. */
function withoutLength(press: Press): Finding {
  const limits = (['longestBar', 'heaviestBar'] as const).map((item) => ({
    item,
    limit: limitOf(press, item),
  }));
  const finite = limits.find(({ limit }) => typeof limit !== 'number' || Number.isFinite(limit));
  if (!finite) {
    const fact = { rule: 'press limit', item: 'longestBar', sized: { is: 'part' }, given: 0 } as const;
    return { ...fact, outcome: 'held', verdict: 'OK', press: press.name };
  }
  return {
    rule: 'blank cell',
    outcome: 'open',
    verdict: 'Not checked',
    press: press.name,
    cell: { cell: 'Length' },
    unchecked: 'longest bar',
    item: finite.item,
  };
}
