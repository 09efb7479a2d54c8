import type { Area } from '../../workbook/area.js';
import type { Content } from '../../workbook/content.js';
import type { CellsStep } from '../../workbook/write/step.js';

/** Contents for an area. */
export interface Patch {
  area: Area;
  contents: readonly (readonly Content[])[];
}

/** As few writing steps as stand together: patches below each other become one. */
export function writingSteps(patches: readonly Patch[]): CellsStep[] {
  const sorted = [...patches].sort(
    (a, b) => compare(a.area.sheet, b.area.sheet) || a.area.column - b.area.column || a.area.row - b.area.row,
  );
  const joined: { area: Area; contents: (readonly Content[])[] }[] = [];
  for (const { area, contents } of sorted) {
    const last = joined.at(-1);
    if (last && follows(last.area, area)) {
      last.area = { ...last.area, rows: last.area.rows + area.rows };
      last.contents.push(...contents);
    } else joined.push({ area, contents: [...contents] });
  }
  return joined.map(({ area, contents }) => ({ kind: 'cells', area, contents }));
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
