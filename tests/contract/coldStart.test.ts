import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { DOMWindow } from 'jsdom';
import type { StartUpState } from '../../src/core/shop/startUpState.js';
import type { StartUp } from '../../src/functions/shop/startUp.js';
import { bundle } from './support/built.js';
import { grades, presses, settings, shopArguments, tools } from './support/calls.js';
import { callCell, callCells, type CellCall } from './support/cellCall.js';
import { OfficialRuntime, type Outcome } from './support/officialRuntime.js';
import {
  type HostManners,
  openWorkbook,
  type WorkbookCells,
  type WorkbookDouble,
} from './support/workbookDouble.js';

const unknownHere = {
  error: {
    code: '#N/A',
    message:
      'The shop this cell was given is not known here yet: press Ctrl+Alt+F9, or enter the cell ShopStamp again (F2, then Enter).',
  },
};
const workbook: WorkbookCells = {
  formula:
    '=TONROW.SHOP(Machines[[#Headers],[#Data]],Punches[#All],Steels[[#Headers],[#Data]],Rules[[#Headers],[#Data]])',
  tables: { Machines: presses, Punches: tools, Steels: grades, Rules: settings },
};

let stamp: string;
let runtime: OfficialRuntime | undefined;

/** A runtime that has seen no shop, as after the workbook is opened. */
function freshRuntime(prepare?: (window: DOMWindow) => void): OfficialRuntime {
  runtime = new OfficialRuntime(bundle, prepare);
  return runtime;
}

function freshRuntimeWith(cells: WorkbookCells, manners?: HostManners): [OfficialRuntime, WorkbookDouble] {
  let double: WorkbookDouble | undefined;
  const fresh = freshRuntime((window) => (double = openWorkbook(window, cells, manners)));
  return [fresh, double as WorkbookDouble];
}

function startUpAll(fresh: OfficialRuntime): StartUp {
  return (fresh.window as unknown as { tonrowStartUp: StartUp }).tonrowStartUp;
}

function startUpOf(fresh: OfficialRuntime): StartUpState {
  return startUpAll(fresh).state;
}

const throatOf = (press: string, named = stamp): CellCall => ({
  name: 'PRESSVALUE',
  given: [press, 'Punch throat', named],
});

beforeAll(async () => {
  const other = new OfficialRuntime(bundle);
  stamp = String((await callCell(other, 'SHOP', ...shopArguments)).value);
  other.close();
});
afterEach(() => runtime?.close());

describe('a fresh runtime whose first call carries a stamp it has never seen', () => {
  it('reads the tables that the formula of the shop cell names, whatever they are called', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    const [outcome] = await callCells(fresh, [throatOf('Bay B')]);
    expect(outcome).toEqual({ value: 8 });
    expect(double).toMatchObject({ reads: 1, syncs: 2 });
  });

  it('computes 500 waiting calls after one shared reading', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    const calls = Array.from({ length: 500 }, (_, at) => throatOf(at % 2 ? 'Bay A' : 'Bay B'));
    const outcomes = await callCells(fresh, calls);
    expect(outcomes).toEqual(calls.map((_, at) => ({ value: at % 2 ? 12 : 8 })));
    expect(double.reads).toBe(1);
  });

  it('says what to do where there is no workbook to read', async () => {
    expect(await callCell(freshRuntime(), 'PRESSVALUE', 'Bay A', 'Punch', stamp)).toEqual(unknownHere);
  });

  it('says what to do when the workbook cannot be read', async () => {
    const [fresh] = freshRuntimeWith(workbook, { ending: 'rejects' });
    expect(await callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')])).toEqual([
      unknownHere,
      unknownHere,
    ]);
  });

  it('says what to do when the workbook never answers', async () => {
    const [fresh, double] = freshRuntimeWith(workbook, { ending: 'never settles', haste: 20 });
    expect(await callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')])).toEqual([
      unknownHere,
      unknownHere,
    ]);
    expect(double.reads).toBe(1);
    expect(double.syncs).toBe(1);
  });

  it('says what to do when the workbook holds another shop, and never computes with that', async () => {
    const changed = presses.map((row) => (row[0] === 'Punch throat' ? ['Punch throat', '', 99, 99] : row));
    const [fresh] = freshRuntimeWith({ ...workbook, tables: { ...workbook.tables, Machines: changed } });
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([unknownHere]);
  });

  it.each([
    ['no SHOP formula', { ...workbook, formula: '=1+1' }],
    ['a SHOP formula that computes its tables', { ...workbook, formula: '=TONROW.SHOP(FILTER(A1:B2,1))' }],
    ['tables without headings', { ...workbook, tables: { ...workbook.tables, Machines: [[1, 2]] } }],
  ])('says what to do when the shop cell has %s', async (_, cells) => {
    const [fresh] = freshRuntimeWith(cells);
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([unknownHere]);
  });

  it('computes the calls that wait as soon as the shop cell is calculated', async () => {
    const [fresh, double] = freshRuntimeWith(workbook, { ending: 'never settles', haste: 20 });
    const waiting = callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')]);
    await callCell(fresh, 'SHOP', ...shopArguments);
    expect(await waiting).toEqual([{ value: 12 }, { value: 8 }]);
    expect(double.reads).toBe(1);
  });

  it('refuses what is no stamp at once, without another reading than the one at the start', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    const outcome = await callCell(fresh, 'PRESSVALUE', 'Bay A', 'Punch', 'in · 2 presses');
    expect(outcome.error?.message).toMatch(
      /^Shop: 'in · 2 presses' is not the shop cell\. Give the cell named ShopStamp/,
    );
    expect(double.reads).toBe(1);
  });

  it('serves calls that need no shop meanwhile', async () => {
    const [fresh] = freshRuntimeWith(workbook, { ending: 'never settles', haste: 20 });
    const waiting = callCells(fresh, [throatOf('Bay A')]);
    const outcome = await callCell(fresh, 'HOLEMIN', '1/2', 'A36');
    expect(outcome.value).toBeCloseTo(0.5, 12);
    expect(await waiting).toEqual([unknownHere]);
  });
});

describe('a runtime that has just started', () => {
  it('reads the shop before any call asks, and computes later calls without another reading', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    await expect.poll(() => startUpOf(fresh)).toEqual({ state: 'ok', stamp });
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([{ value: 12 }]);
    expect(double).toMatchObject({ reads: 1, syncs: 2 });
  });

  it('reads anew for a call after a start that could not read', async () => {
    const [fresh, double] = freshRuntimeWith(workbook, { ending: 'rejects' });
    await expect.poll(() => startUpOf(fresh).state).toBe('not read');
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([unknownHere]);
    expect(double.reads).toBe(2);
  });

  it('keeps why the shop could not be read', async () => {
    const [fresh] = freshRuntimeWith({ ...workbook, formula: '=1+1' });
    await expect
      .poll(() => startUpOf(fresh))
      .toEqual({
        state: 'no SHOP formula',
        messages: ['ShopStamp: the cell holds no SHOP formula. Write =TONROW.SHOP(…) in it.'],
      });
  });
});

describe('a recalculation of a whole list', () => {
  const headings = ['Mark', 'Section', 'Grade', 'Length', 'Hole', 'Edge', 'End', 'Press'];
  const length = 50_000;

  it('answers 50,000 calls in shuffled order, the shop cell among them, each with its own result', async () => {
    const [fresh] = freshRuntimeWith(workbook);
    const calls = Array.from({ length }, (_, at): CellCall => {
      const row = [`C${at}`, 'FB 3/8x4', 'A36', 12 + at / 16, '13/16', '1-1/2', '1-1/2', 'Bay A'];
      return { name: 'ROWCHECK', given: [[headings], [row], stamp, 'mass'] };
    });
    const order = shuffled(calls.map((_, at) => at));
    const sent = order.map((at) => calls[at] as CellCall);
    sent.splice(length / 2, 0, { name: 'SHOP', given: shopArguments });
    const outcomes = await callCells(fresh, sent);
    expect(outcomes.splice(length / 2, 1)).toEqual([{ value: stamp }]);
    outcomes.forEach((outcome, position) => {
      const inches = 12 + (order[position] ?? 0) / 16;
      // 3/8 × 4 in of steel, 490 lb/ft³ as 7850 kg/m³ in SI: 0.4254 lb per inch.
      expect(massOf(outcome)).toBeCloseTo(0.375 * 4 * inches * 0.283599, 2);
    });
  });
});

/** The cells of a sheet that call us, as a host keeps them: the shop's own and some rows that take its value. */
class Sheet {
  stamp: unknown;
  rows: Outcome[] = [];
  private work: Promise<void> = Promise.resolve();

  constructor(
    readonly runtime: () => OfficialRuntime,
    cached: string,
  ) {
    this.stamp = cached;
  }

  /** The rows take the value the shop's cell shows: they are entered, it is clean. */
  async enterRows(): Promise<void> {
    const calls = Array.from({ length: 200 }, (_, at) =>
      throatOf(at % 2 ? 'Bay A' : 'Bay B', String(this.stamp)),
    );
    this.rows = await callCells(this.runtime(), calls);
  }

  readonly calculateAll = (): void => {
    this.work = (async () => {
      const [shop] = await callCells(this.runtime(), [{ name: 'SHOP', given: shopArguments }]);
      this.stamp = shop?.value;
      await this.enterRows();
    })();
  };

  async settled(): Promise<void> {
    await this.work;
  }

  get right(): boolean {
    return this.rows.length === 200 && this.rows.every(({ value }, at) => value === (at % 2 ? 12 : 8));
  }
}

describe('a cold start while a cell is edited', () => {
  /** The sheet after its rows were entered, the cell being edited for so many milliseconds of the page. */
  async function started(
    editedMs: number,
    manners: HostManners,
    cached = stamp,
  ): Promise<[Sheet, WorkbookDouble]> {
    const leaves = Date.now() + editedMs;
    const sheet: Sheet = new Sheet(() => runtime as OfficialRuntime, cached);
    const [, double] = freshRuntimeWith(workbook, {
      isEdited: () => Date.now() < leaves,
      calculate: sheet.calculateAll,
      haste: 50,
      ...manners,
    });
    await sheet.enterRows();
    return [sheet, double];
  }

  it.each([true, false])(
    'ends with every row right and no key pressed, whether the host delays requests (%s) or refuses them',
    async (delays) => {
      const [sheet, double] = await started(400, { delays });
      expect(sheet.right).toBe(true);
      expect(double.calculations).toBe(0);
    },
  );

  it.each([true, false])(
    'ends so too where the cell is edited for longer than rows wait (delays: %s)',
    async (delays) => {
      const [sheet, double] = await started(2000, { delays });
      expect(sheet.rows[0]).toEqual(unknownHere);
      await expect.poll(() => double.calculations, { timeout: 5000 }).toBe(1);
      await sheet.settled();
      expect(sheet.right).toBe(true);
      expect(double.calculations).toBe(1);
    },
  );

  it('heals rows whose cached stamp is of a shop that somebody changed meanwhile', async () => {
    const old = stamp.replace(/.{4}$/, 'AAAA');
    const [sheet, double] = await started(0, {}, old);
    expect(sheet.rows[0]).toEqual(unknownHere);
    await expect.poll(() => double.calculations, { timeout: 5000 }).toBe(1);
    await sheet.settled();
    expect(sheet.stamp).toBe(stamp);
    expect(sheet.right).toBe(true);
  });

  it('leaves manual calculation to the user, and the pane can say so', async () => {
    const old = stamp.replace(/.{4}$/, 'AAAA');
    const [sheet, double] = await started(0, { calculationMode: 'Manual' }, old);
    await expect.poll(() => startUpAll(sheet.runtime()).recalculation, { timeout: 5000 }).toBe('manual');
    expect(double.calculations).toBe(0);
    sheet.calculateAll();
    await sheet.settled();
    expect(sheet.right).toBe(true);
  });

  it('serves two workbooks, each with its own shop', async () => {
    const [fresh] = freshRuntimeWith(workbook);
    const changed = presses.map((row) => (row[0] === 'Punch throat' ? ['Punch throat', '', 30, 31] : row));
    const other = String((await callCell(fresh, 'SHOP', changed)).value);
    const [own, foreign] = await callCells(fresh, [throatOf('Bay A'), throatOf('Bay A', other)]);
    expect([own, foreign]).toEqual([{ value: 12 }, { value: 30 }]);
  });
});

function massOf(outcome: Outcome): number {
  return Number((outcome.value as unknown[][])[0]?.[0]);
}

/** A fixed shuffle: multiplication by a number without a common divisor. */
function shuffled(list: number[]): number[] {
  return list.map((_, at) => list[(at * 1_237 + 17) % list.length] ?? 0);
}
