import type { DOMWindow } from 'jsdom';

/** What a workbook holds that a reading of the shop may ask for. */
export interface WorkbookCells {
  /** The formula in the cell named ShopStamp. */
  formula: string;
  tables: Record<string, unknown[][]>;
}

export interface WorkbookDouble {
  /** Runs of a request, from first to last. */
  reads: number;
  /** Round trips to the host. */
  syncs: number;
}

type Ending = 'answers' | 'rejects' | 'never settles';

/** Puts a workbook behind the window's Office and Excel, and counts what is asked of it. */
export function openWorkbook(
  window: DOMWindow,
  cells: WorkbookCells,
  ending: Ending = 'answers',
): WorkbookDouble {
  const double: WorkbookDouble = { reads: 0, syncs: 0 };
  const settled = <Value>(value: Value): Promise<Value> => {
    double.syncs += 1;
    if (ending === 'rejects') return Promise.reject(new Error('InvalidOperationInCellEditMode'));
    return ending === 'answers' ? Promise.resolve(value) : new Promise(() => undefined);
  };
  const range = (loaded: object) => ({ load: () => undefined, ...loaded });
  const workbook = {
    names: { getItem: () => ({ getRange: () => range({ formulas: [[cells.formula]] }) }) },
    tables: {
      getItem: (name: string) => ({
        getHeaderRowRange: () => range({ values: cells.tables[name]?.slice(0, 1) }),
        getDataBodyRange: () => range({ values: cells.tables[name]?.slice(1) }),
      }),
    },
  };
  const context = { workbook, sync: () => settled(undefined) };
  const run = (batch: (given: typeof context) => Promise<unknown>) => {
    double.reads += 1;
    return batch(context);
  };
  const { Office } = window as unknown as { Office: { onReady: unknown } };
  Office.onReady = () => Promise.resolve({ host: 'Excel', platform: 'PC' });
  Object.assign(window, { Excel: { run } });
  return double;
}
