import { type Area, cellAddress, cellOf } from '../../workbook/area.js';
import type { Content } from '../../workbook/content.js';
import type { CellsStep } from '../../workbook/step.js';

/** Something for each cell of an area. */
export interface Patch<Item> {
  area: Area;
  items: readonly (readonly Item[])[];
}

/** As few areas as stand together: patches below each other become one, so that reading and writing take few messages. */
export function joined<Item>(patches: readonly Patch<Item>[]): Patch<Item>[] {
  const sorted = [...patches].sort(
    (a, b) => compare(a.area.sheet, b.area.sheet) || a.area.column - b.area.column || a.area.row - b.area.row,
  );
  const result: { area: Area; items: (readonly Item[])[] }[] = [];
  for (const { area, items } of sorted) {
    const last = result.at(-1);
    if (last && follows(last.area, area)) {
      last.area = { ...last.area, rows: last.area.rows + area.rows };
      for (const item of items) last.items.push(item);
    } else result.push({ area, items: [...items] });
  }
  return result;
}

export function writingSteps(patches: readonly Patch<Content>[]): CellsStep[] {
  return joined(patches).map(({ area, items }) => ({ kind: 'cells', area, contents: items }));
}

/** The cells, as `Quote!C2`, whose item does not pass. */
export function failing<Item>(
  patches: readonly Patch<Item>[],
  passes: (item: Item, patch: number, row: number, column: number) => boolean,
): string[] {
  return patches.flatMap(({ area, items }, patch) =>
    items.flatMap((row, down) =>
      row.flatMap((item, right) =>
        passes(item, patch, down, right) ? [] : `${area.sheet}!${cellAddress(cellOf(area, down, right))}`,
      ),
    ),
  );
}

function follows(above: Area, below: Area): boolean {
  return (
    above.sheet === below.sheet &&
    above.column === below.column &&
    above.columns === below.columns &&
    above.row + above.rows === below.row
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
