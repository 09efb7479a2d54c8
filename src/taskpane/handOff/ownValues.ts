import type { CellValue } from '../../core/quantity/cellValue.js';
import type { Area } from '../../workbook/area.js';
import { type Content, isFormula } from '../../workbook/content.js';
import type { LongWork } from '../../workbook/longWork.js';
import type { Workbook } from '../../workbook/port.js';
import type { Step } from '../../workbook/step.js';
import { failing, joined, writingSteps } from './areasOfCells.js';
import { type FoundFormula, freeListName, listRows, readList } from '../shared/formulaList.js';
import { valueColumn } from '../../sheet/keptFormulas/formulaList.js';
import { sameFormula } from '../../sheet/formula/hostFormula.js';
import { anchorsFor, placedFormulas } from './places.js';

/** What turns formulas of this workbook into values; for the shop, with the list they come back from. */
export async function stepsToValues(
  workbook: Workbook,
  formulas: readonly FoundFormula[],
  { listed }: { listed: boolean },
): Promise<Step[]> {
  const values = writingSteps(formulas.map(({ area, values }) => ({ area, items: values })));
  if (!listed) return values;
  const sheets = await workbook.sheets();
  const name = freeListName(sheets);
  const contents = listRows(formulas, await anchorsFor(workbook, formulas));
  const area = { sheet: name, row: 0, column: 0, rows: contents.length, columns: contents[0]?.length ?? 0 };
  const formats = contents.map((row) => row.map((_, at) => (at === valueColumn ? undefined : '@')));
  return [{ kind: 'sheet', name }, { kind: 'cells', area, contents, formats }, ...values];
}

/** Cells that no longer show what they showed when the formulas were found. */
export async function changedValues(
  workbook: Workbook,
  formulas: readonly FoundFormula[],
): Promise<string[]> {
  const patches = joined(formulas.map(({ area, values }) => ({ area, items: values })));
  const areas = patches.map(({ area }) => area);
  const read = areas.length > 0 ? await workbook.read(areas, ['values', 'formulas']) : [];
  return failing(patches, (value, at, row, column) => {
    const left = (read[at]?.formulas[row]?.[column] ?? null) !== null;
    return !left && (read[at]?.values[row]?.[column] ?? '') === (value ?? '');
  });
}

/** What brings the formulas of a list back. */
export interface BringBack {
  steps: Step[];
  count: number;
  /** Formulas that go to another cell than they came from, since rows or columns moved. */
  moved: number;
  /** Cells whose row was deleted: their formula does not come back. */
  gone: string[];
  /** Cells that a formula fills beside its own: they are emptied first, so that it can. */
  filled: number;
  /** Cells that show something else than when their formula became a value. */
  edited: string[];
  /** Compares every formula with the list; gives the cells where one differs. */
  verify: () => Promise<string[]>;
}

export async function bringBack(
  workbook: Workbook,
  listName: string,
  work: LongWork = {},
): Promise<BringBack> {
  const [list] = await workbook.read([{ usedOf: listName }], ['values'], work);
  const { formulas, moved, gone } = await placedFormulas(workbook, readList(list?.values ?? []), work);
  const shown = joined(
    formulas.map(({ area, value }) => ({
      area,
      items: filled<CellValue | undefined>(area, value, undefined),
    })),
  );
  const now = await workbook.read(
    shown.map(({ area }) => area),
    ['values'],
    work,
  );
  const edited = failing(
    shown,
    (value, at, row, column) =>
      value === undefined || (now[at]?.values[row]?.[column] ?? '') === (value ?? ''),
  );
  const back = joined(
    formulas.map(({ area, formula }) => ({ area, items: filled<Content>(area, { formula }, null) })),
  );
  const blank = list ? [{ area: list.area, items: list.values.map((row) => row.map(() => null)) }] : [];
  const beside = formulas.reduce((sum, { area }) => sum + area.rows * area.columns - 1, 0);
  const verify = async () => {
    const read = await workbook.read(
      back.map(({ area }) => area),
      ['formulas'],
    );
    return failing(
      back,
      (content, at, row, column) =>
        !isFormula(content) || sameFormula(read[at]?.formulas[row]?.[column] ?? '', content.formula),
    );
  };
  return {
    steps: [...writingSteps(back), ...writingSteps(blank)],
    count: formulas.length,
    moved,
    gone,
    filled: beside,
    edited,
    verify,
  };
}

/** The first cell of an area, and the others. */
function filled<Item>({ rows, columns }: Area, first: Item, others: Item): Item[][] {
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_unused, right) => (down + right === 0 ? first : others)),
  );
}
