import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { DOMWindow } from 'jsdom';
import type { StartUp, StartUpState } from '../../src/functions/shop/startUp.js';
import { bundle } from './support/built.js';
import { grades, presses, settings, shopArguments, tools } from './support/calls.js';
import { callCell, callCells, type CellCall } from './support/cellCall.js';
import { OfficialRuntime, type Outcome } from './support/officialRuntime.js';
import { openWorkbook, type WorkbookCells, type WorkbookDouble } from './support/workbookDouble.js';

const pressF9 = {
  error: { code: '#N/A', message: 'The shop data is newer than this sheet: press F9.' },
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

function freshRuntimeWith(
  cells: WorkbookCells,
  ending?: Parameters<typeof openWorkbook>[2],
): [OfficialRuntime, WorkbookDouble] {
  let double: WorkbookDouble | undefined;
  const fresh = freshRuntime((window) => (double = openWorkbook(window, cells, ending)));
  return [fresh, double as WorkbookDouble];
}

function startUpOf(fresh: OfficialRuntime): StartUpState {
  return (fresh.window as unknown as { tonrowStartUp: StartUp }).tonrowStartUp.state;
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
    expect(double).toEqual({ reads: 1, syncs: 2 });
  });

  it('computes 500 waiting calls after one shared reading', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    const calls = Array.from({ length: 500 }, (_, at) => throatOf(at % 2 ? 'Bay A' : 'Bay B'));
    const outcomes = await callCells(fresh, calls);
    expect(outcomes).toEqual(calls.map((_, at) => ({ value: at % 2 ? 12 : 8 })));
    expect(double.reads).toBe(1);
  });

  it('says what to do where there is no workbook to read', async () => {
    expect(await callCell(freshRuntime(), 'PRESSVALUE', 'Bay A', 'Punch', stamp)).toEqual(pressF9);
  });

  it('says what to do when the workbook cannot be read', async () => {
    const [fresh] = freshRuntimeWith(workbook, 'rejects');
    expect(await callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')])).toEqual([pressF9, pressF9]);
  });

  it('says what to do when the workbook never answers', async () => {
    const started = Date.now();
    const [fresh, double] = freshRuntimeWith(workbook, 'never settles');
    expect(await callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')])).toEqual([pressF9, pressF9]);
    expect(Date.now() - started).toBeLessThan(10_000);
    expect(double.reads).toBe(1);
  });

  it('says what to do when the workbook holds another shop, and never computes with that', async () => {
    const changed = presses.map((row) => (row[0] === 'Punch throat' ? ['Punch throat', '', 99, 99] : row));
    const [fresh] = freshRuntimeWith({ ...workbook, tables: { ...workbook.tables, Machines: changed } });
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([pressF9]);
  });

  it.each([
    ['no SHOP formula', { ...workbook, formula: '=1+1' }],
    ['a SHOP formula that computes its tables', { ...workbook, formula: '=TONROW.SHOP(FILTER(A1:B2,1))' }],
    ['tables without headings', { ...workbook, tables: { ...workbook.tables, Machines: [[1, 2]] } }],
  ])('says what to do when the shop cell has %s', async (_, cells) => {
    const [fresh] = freshRuntimeWith(cells);
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([pressF9]);
  });

  it('computes the calls that wait as soon as the shop cell is calculated', async () => {
    const [fresh] = freshRuntimeWith(workbook, 'never settles');
    const started = Date.now();
    const waiting = callCells(fresh, [throatOf('Bay A'), throatOf('Bay B')]);
    await callCell(fresh, 'SHOP', ...shopArguments);
    expect(await waiting).toEqual([{ value: 12 }, { value: 8 }]);
    expect(Date.now() - started).toBeLessThan(4_000);
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
    const [fresh] = freshRuntimeWith(workbook, 'never settles');
    const waiting = callCells(fresh, [throatOf('Bay A')]);
    const outcome = await callCell(fresh, 'HOLEMIN', '1/2', 'A36');
    expect(outcome.value).toBeCloseTo(0.5, 12);
    expect(await waiting).toEqual([pressF9]);
  });
});

describe('a runtime that has just started', () => {
  it('reads the shop before any call asks, and computes later calls without another reading', async () => {
    const [fresh, double] = freshRuntimeWith(workbook);
    await expect.poll(() => startUpOf(fresh)).toEqual({ state: 'ok', stamp });
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([{ value: 12 }]);
    expect(double).toEqual({ reads: 1, syncs: 2 });
  });

  it('reads anew for a call after a start that could not read', async () => {
    const [fresh, double] = freshRuntimeWith(workbook, 'rejects');
    await expect.poll(() => startUpOf(fresh).state).toBe('not read');
    expect(await callCells(fresh, [throatOf('Bay A')])).toEqual([pressF9]);
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

function massOf(outcome: Outcome): number {
  return Number((outcome.value as unknown[][])[0]?.[0]);
}

/** A fixed shuffle: multiplication by a number without a common divisor. */
function shuffled(list: number[]): number[] {
  return list.map((_, at) => list[(at * 1_237 + 17) % list.length] ?? 0);
}
