// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockPlan } from '../../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import type { PlanOptions } from '../../../src/planner/planQueue.js';
import { PlanStopped } from '../../../src/planner/planQueue.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { ShownPane } from '../support/shownPane.js';
import { fillWorkbook } from '../support/workbooks.js';

/** Plans at once, or tells its best and waits until it is stopped. */
const planner = vi.hoisted(() => ({ waits: false }));
vi.mock('../../../src/planner/planInWorker.js', () => ({
  planInWorker: (problem: StockProblem, { onBest, signal }: PlanOptions = {}) => {
    const plan = planStock(problem);
    if (!planner.waits) return Promise.resolve(plan);
    return new Promise<StockPlan>((resolve, reject) => {
      if (signal?.aborted) reject(new PlanStopped());
      signal?.addEventListener('abort', () => resolve({ ...plan, isStopped: true, proof: undefined }));
      onBest?.({ ...plan, bound: plan.purchase * 0.9, proof: undefined });
    });
  },
}));

let pane: ShownPane;
beforeEach(() => {
  planner.waits = false;
});
afterEach(() => pane.close());

async function open(kind: string): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, kind);
  pane = new ShownPane(workbook);
  await pane.click('Stock');
  return workbook;
}

describe('Stock', () => {
  it('says what it does and what it needs before there is anything', async () => {
    await open('empty');
    await pane.says('Which bars to buy for a parts list, and what to cut from each');
    await pane.says('This workbook has no shop sheet yet.');
    pane.close();
    await open('shop');
    await pane.says('There is no parts list yet');
  });

  it('names the rows it does not plan, with why', async () => {
    await open('shop-bars-stock');
    await pane.says('11 rows are planned: 179 pieces of 7 sections.');
    expect(pane.text).toContain('Not planned: PL1. Plates are cut in two directions and are not planned.');
  });

  it('leaves out rows that are Off press when asked to', async () => {
    await open('shop-bars-stock');
    await pane.says('11 rows are planned');
    (await pane.field(/Off press too/)).click();
    await pane.says('Off press rows are left out, as asked.');
    await pane.says('8 rows are planned');
  });

  it('plans the sections whose lengths are known, and names the others', async () => {
    await open('shop-bars-stock');
    await pane.says('3 sections have no length that can be read');
    await pane.click('Plan the bars');
    await pane.says('Planned: ');
    await pane.says('Not planned, since no length can be read: C6X8.2, A36; FB3/8X4, A36; RB3/4, A36.');
    expect(pane.text).toContain('2 × RA4 (42\'-0") not cut: no bar that can be had is long enough.');
    expect(await pane.button('Plan again')).toBeTruthy();
  });

  it('plans with invented lengths when asked to, and says so', async () => {
    await open('shop-bars-stock');
    (await pane.field(/Where no length is known/)).click();
    await pane.says('Comes in 20\'-0" and 40\'-0": invented.');
    await pane.saysNoMore('No length is known, so it is not planned.');
    await pane.click('Plan the bars');
    await pane.says('The lengths are invented: ask your supplier.');
  });

  it('tells the best so far and the bound, and keeps the best when it is stopped', async () => {
    planner.waits = true;
    await open('shop-bars-stock');
    await pane.says('3. Plan');
    await pane.click('Plan the bars');
    await pane.says('4 bars so far; no plan needs fewer than 4');
    await pane.click('Stop and keep the best');
    await pane.says('It was stopped: this is the best plan so far.');
    expect(pane.text).toContain('Not planned, since you stopped first:');
  });

  it('asks for the lengths of a section and puts them into the Stock table, previewed', async () => {
    const workbook = await open('shop-bars-stock');
    await pane.fill('Lengths of FB3/8X4, A36', 'abc');
    await pane.says("'abc'");
    await pane.fill('Lengths of FB3/8X4, A36', '20 ft, 24 ft');
    await pane.saysNoMore("'abc'");
    const form = (await pane.field('Lengths of FB3/8X4, A36')).closest('form');
    form?.requestSubmit();
    await pane.says('This will be written');
    expect(workbook.shown('Stock')).toHaveLength(6);
    await pane.click('Write to sheet');
    await pane.says('Comes in 20\'-0" and 24\'-0".');
    expect(workbook.shown('Stock').slice(-2)).toEqual([
      ['FB3/8X4', 'A36', '20 ft', null, null],
      ['FB3/8X4', 'A36', '24 ft', null, null],
    ]);
  });

  it('makes the Stock table on the shop sheet where there is none', async () => {
    const workbook = await open('shop-bars');
    await pane.fill('Lengths of FB3/8X4, A36', '20 ft');
    (await pane.field('Lengths of FB3/8X4, A36')).closest('form')?.requestSubmit();
    await pane.click('Write to sheet');
    await pane.says('Comes in 20\'-0".');
    expect(workbook.shown('Stock')).toEqual([
      ['Section', 'Grade', 'Length', 'Price', 'Available'],
      ['FB3/8X4', 'A36', '20 ft', null, null],
    ]);
  });

  it('says when the plan is out of date, and still has it when the place is left and opened again', async () => {
    const workbook = await open('shop-bars-stock');
    await pane.says('3. Plan');
    await pane.click('Plan the bars');
    await pane.says('Planned: ');
    await pane.click('Steps');
    await pane.click('Stock');
    await pane.says('How to cut them');
    expect(pane.text).not.toContain('have changed since this plan');
    workbook.type('Rack', 3, 21, [[99]]);
    await pane.says('have changed since this plan. Plan again.');
  });

  it('writes the plan to a new sheet once it is looked at, a second one beside the first, and takes it back', async () => {
    const workbook = await open('shop-bars-stock');
    await pane.says('3. Plan');
    await pane.click('Plan the bars');
    await pane.click('Write plan to sheet');
    await pane.says('This will be written');
    expect(pane.text).toContain('New sheet Stock plan');
    expect(workbook.memory.sheets.has('Stock plan')).toBe(false);
    await pane.click('Write to sheet');
    await pane.says('Done: Write plan to sheet Stock plan.');
    const cells = [...(workbook.memory.sheets.get('Stock plan')?.values() ?? [])].map(
      ({ content }) => content,
    );
    expect(cells).toContain('RA1');
    await pane.click('Write plan to sheet');
    await pane.says('New sheet Stock plan 2');
    await pane.click('Cancel');
    await pane.click('Undo');
    await pane.until('no sheet', () => !workbook.memory.sheets.has('Stock plan'));
  });

  it('prints each bar beside its list, with job and date', async () => {
    await open('shop-bars-stock');
    await pane.says('3. Plan');
    await pane.click('Plan the bars');
    await pane.click('Print');
    const page = await pane.until(
      'the page',
      () => document.querySelector<HTMLIFrameElement>('iframe')?.srcdoc,
    );
    const { body } = new DOMParser().parseFromString(page, 'text/html');
    const bars = [...body.querySelectorAll('.bar')];
    expect(bars.length).toBeGreaterThan(3);
    for (const bar of bars)
      expect([bar.querySelectorAll('svg').length, bar.querySelectorAll('table').length]).toEqual([1, 1]);
    expect(body.textContent).toContain('This workbook · ');
    await pane.click('Close the page');
    await pane.until('no page', () => !document.querySelector('iframe'));
  });
});
