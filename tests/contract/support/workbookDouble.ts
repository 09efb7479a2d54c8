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
  /** Full calculations that were asked for. */
  calculations: number;
}

export interface HostManners {
  ending?: 'answers' | 'rejects' | 'never settles';
  /** Whether a cell is being edited at this moment. */
  isEdited?: () => boolean;
  /** A host that knows `delayForCellEdit` answers when the cell is left; another refuses. */
  delays?: boolean;
  calculationMode?: 'Automatic' | 'Manual';
  /** Does what the host does when it is asked to calculate everything. */
  calculate?: () => void;
  /** How many times faster than real the clock of the page goes. */
  haste?: number;
}

const pollMs = 10;

/** Puts a workbook behind the window's Office and Excel, and counts what is asked of it. */
export function openWorkbook(
  window: DOMWindow,
  cells: WorkbookCells,
  manners: HostManners = {},
): WorkbookDouble {
  const double: WorkbookDouble = { reads: 0, syncs: 0, calculations: 0 };
  const { haste = 1 } = manners;
  const { setTimeout: after } = window;
  if (haste !== 1)
    Object.assign(window, {
      setTimeout: (work: () => void, milliseconds = 0) => after.call(window, work, milliseconds / haste),
    });
  let delays = false;
  const sync = async () => {
    double.syncs += 1;
    const { ending = 'answers', isEdited = () => false } = manners;
    if (ending === 'rejects') throw new Error('the host failed');
    if (ending === 'never settles') await new Promise(() => undefined);
    if (isEdited() && !(delays && manners.delays === true))
      throw Object.assign(new Error('edited'), { code: 'InvalidOperationInCellEditMode' });
    while (isEdited()) await new Promise((resolve) => setTimeout(resolve, pollMs));
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
    application: {
      calculationMode: manners.calculationMode ?? 'Automatic',
      load: () => undefined,
      calculate: (kind: string) => {
        if (kind !== 'Full') throw new Error(`a ${kind} calculation leaves clean cells alone`);
        double.calculations += 1;
        manners.calculate?.();
      },
    },
  };
  const context = { workbook, sync };
  const run = (
    options: { delayForCellEdit?: boolean },
    batch: (given: typeof context) => Promise<unknown>,
  ) => {
    double.reads += 1;
    delays = options.delayForCellEdit === true;
    return batch(context);
  };
  const { Office } = window as unknown as { Office: { onReady: unknown } };
  Office.onReady = () => Promise.resolve({ host: 'Excel', platform: 'PC' });
  Object.assign(window, { Excel: { run } });
  return double;
}
