import { cellAddress, cellOf } from '../../workbook/area.js';
import type { LongWork } from '../../workbook/longWork.js';
import type { Workbook } from '../../workbook/port.js';
import type { Step } from '../../workbook/write/step.js';
import { writingSteps } from './areasOfCells.js';
import { freeListName, isListName, listRows, readList, sameFormula } from './formulaList.js';
import { type FoundFormula } from './ourFormulas.js';

/** What turns formulas of this workbook into values; for the shop, with the list they come back from. */
export async function stepsToValues(
  workbook: Workbook,
  formulas: readonly FoundFormula[],
  { listed }: { listed: boolean },
): Promise<Step[]> {
  const values = writingSteps(formulas.map(({ area, values: contents }) => ({ area, contents })));
  if (!listed) return values;
  const sheets = await workbook.sheets();
  const name = freeListName(sheets);
  const contents = listRows(formulas);
  const area = { sheet: name, row: 0, column: 0, rows: contents.length, columns: contents[0]?.length ?? 0 };
  const formats = contents.map((row) => row.map((_, at) => (at < row.length - 1 ? '@' : undefined)));
  return [{ kind: 'sheet', name }, { kind: 'cells', area, contents, formats }, ...values];
}

/** Cells that no longer show what they showed when the formulas were found. */
export async function changedValues(
  workbook: Workbook,
  formulas: readonly FoundFormula[],
): Promise<string[]> {
  if (formulas.length === 0) return [];
  const read = await workbook.read(
    formulas.map(({ area }) => area),
    ['values', 'formulas'],
  );
  return formulas.flatMap(({ area, values }, at) =>
    values.flatMap((row, down) =>
      row.flatMap((value, right) => {
        const now = read[at]?.values[down]?.[right] ?? null;
        const left = (read[at]?.formulas[down]?.[right] ?? null) !== null;
        return !left && (now === value || (now ?? '') === (value ?? ''))
          ? []
          : `${area.sheet}!${cellAddress(cellOf(area, down, right))}`;
      }),
    ),
  );
}

/** What brings the formulas of a list back. */
export interface BringBack {
  steps: Step[];
  count: number;
  /** Cells that show something else than when their formula became a value. */
  edited: string[];
  /** Compares every formula with the list; gives the cells where one differs. */
  verify: () => Promise<string[]>;
}

/** The name of the sheet with a list that still holds formulas; undefined where there is none. */
export async function listIn(workbook: Workbook): Promise<string | undefined> {
  const names = (await workbook.sheets()).map(({ name }) => name).filter(isListName);
  if (names.length === 0) return undefined;
  const read = await workbook.read(
    names.map((usedOf) => ({ usedOf })),
    ['values'],
  );
  return names.find((_, at) => (read[at]?.values.length ?? 0) > 1);
}

export async function bringBack(
  workbook: Workbook,
  listName: string,
  work: LongWork = {},
): Promise<BringBack> {
  const [list] = await workbook.read([{ usedOf: listName }], ['values'], work);
  const formulas = readList(list?.values ?? []);
  const areas = formulas.map(({ area }) => area);
  const now = await workbook.read(areas, ['values'], work);
  const edited = formulas.flatMap(({ area, value }, at) =>
    (now[at]?.values[0]?.[0] ?? '') === (value ?? '') ? [] : place(area),
  );
  const back = formulas.map(({ area, formula }) => ({
    area,
    contents: Array.from({ length: area.rows }, (_, down) =>
      Array.from({ length: area.columns }, (_unused, right) => (down + right === 0 ? { formula } : null)),
    ),
  }));
  const blank = list ? [{ area: list.area, contents: list.values.map((row) => row.map(() => null)) }] : [];
  const verify = async () => {
    const read = await workbook.read(areas, ['formulas']);
    return formulas.flatMap(({ area, formula }, at) =>
      sameFormula(read[at]?.formulas[0]?.[0] ?? '', formula) ? [] : place(area),
    );
  };
  return { steps: [...writingSteps(back), ...writingSteps(blank)], count: formulas.length, edited, verify };
}

const place = (area: FoundFormula['area']) => `${area.sheet}!${cellAddress(cellOf(area, 0, 0))}`;
