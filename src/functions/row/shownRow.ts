import type { CellValue } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { type CheckedPart, checkedPart } from '../../core/row/checkRow.js';
import type { Headings } from '../../core/row/headings/readHeadings.js';
import { checkItems, isWorkItem, type RowItem, workItems } from '../../core/row/rowItem.js';
import { rowItemQuantity } from '../../core/say/rowItemQuantity.js';
import { workItemQuantity } from '../../core/say/workItemQuantity.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type RowWorkResult, workOnChecked } from '../../core/work/workOnRow.js';
import type { NamedValue, Working } from '../../core/working/working.js';

type Quantity = Pick<NamedValue, 'kind' | 'value'>;

/** One row of a list, checked once; its time and cost are worked out once, when they are asked for. */
export class ShownRow {
  #checked: CheckedPart | undefined;
  readonly #shown = new Map<RowItem, Quantity>();

  constructor(
    private readonly row: {
      cells: readonly CellValue[];
      headings: Headings;
      shop: Shop;
      /** Of the lengths in texts. */
      unit: LengthUnit;
    },
    working?: Working,
  ) {
    const { cells, headings, shop } = row;
    this.#checked = checkedPart(cells, headings, shop, working);
  }

  quantity(item: RowItem): Quantity {
    const known = this.#shown.get(item);
    if (known) return known;
    if (isWorkItem(item)) this.#showWork();
    else this.#shown.set(item, rowItemQuantity(this.#part().result, item, this.row.unit));
    return this.quantity(item);
  }

  work(working?: Working): RowWorkResult {
    return workOnChecked(this.#part(), this.row.shop, working);
  }

  /** From here on it holds what it shows: the part it was checked as is ten times as large, and is made again for a time. */
  letGo(): void {
    for (const { item } of checkItems) this.quantity(item);
    this.#checked = undefined;
  }

  #showWork(): void {
    const work = this.work();
    for (const { item } of workItems) this.#shown.set(item, workItemQuantity(work, item));
  }

  #part(): CheckedPart {
    const { cells, headings, shop } = this.row;
    return this.#checked ?? checkedPart(cells, headings, shop);
  }
}
