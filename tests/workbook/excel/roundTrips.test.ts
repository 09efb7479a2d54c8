import { describe, expect, it } from 'vitest';
import type { Step } from '../../../src/workbook/step.js';
import { areaAt } from '../contract/underTest.js';
import { openOffice } from '../support/officeUnderTest.js';

const shop = areaAt('A1', 3, 3, 'Shop');
const addShop: Step[] = [
  { kind: 'sheet', name: 'Shop' },
  {
    kind: 'cells',
    area: shop,
    contents: [
      ['Item', 'Unit', 'Bay A'],
      ['Punch', null, 'yes'],
      ['Punch throat', null, 12],
    ],
  },
  { kind: 'table', name: 'Presses', area: shop },
  {
    kind: 'cells',
    area: areaAt('F1', 1, 1, 'Shop'),
    contents: [[{ formula: '=TONROW.SHOP(Presses[#All])' }]],
  },
  { kind: 'name', name: 'ShopStamp', area: areaAt('F1', 1, 1, 'Shop') },
];

/** A workbook with a list and a shop, and the round trips of an action: those waited for, those the host saw. */
async function opened() {
  const under = await openOffice();
  const { workbook, host, hands } = under;
  await hands.type(areaAt('A1', 3, 3), [
    ['Mark', 'Hole', 'Press'],
    ['C1', '13/16', 'Bay A'],
    ['C2', '13/16', 'Bay B'],
  ]);
  await hands.addTable('List', areaAt('A1', 3, 3));
  await hands.addName('Total', areaAt('B2', 1, 1));
  await hands.select(areaAt('A1', 1, 1));
  const tripsOf = async <Result>(action: () => Promise<Result>): Promise<[number, Result]> => {
    const before = { waited: workbook.trips.count, seen: host.requests };
    const result = await action();
    expect(host.requests - before.seen).toBe(workbook.trips.count - before.waited);
    return [workbook.trips.count - before.waited, result];
  };
  return { ...under, tripsOf };
}

describe('round trips', () => {
  it.each([
    ['sheets', 1],
    ['names', 1],
    ['tables', 2],
    ['selection', 1],
  ] as const)('%s: %i', async (action, expected) => {
    const { workbook, tripsOf } = await opened();
    expect((await tripsOf<unknown>(() => workbook[action]()))[0]).toBe(expected);
  });

  it('tables of a workbook without: 1', async () => {
    const { workbook } = await openOffice();
    await workbook.tables();
    expect(workbook.trips.count).toBe(1);
  });

  it('reading a table, a name, cells and a whole sheet together: 1', async () => {
    const { workbook, tripsOf } = await opened();
    const places = [{ table: 'List' }, { name: 'Total' }, areaAt('A1', 2, 2), { usedOf: 'Parts' }];
    const [trips] = await tripsOf(() => workbook.read(places, ['values', 'formulas', 'formats', 'text']));
    expect(trips).toBe(1);
  });

  it('reading what is not there: 2, the second to name it', async () => {
    const { workbook, tripsOf } = await opened();
    const [trips] = await tripsOf(() =>
      workbook.read([{ table: 'Gone' }], ['values']).catch(() => undefined),
    );
    expect(trips).toBe(2);
  });

  it('going to cells: 1', async () => {
    const { workbook, tripsOf } = await opened();
    expect((await tripsOf(() => workbook.goTo(areaAt('C3', 1, 1))))[0]).toBe(1);
  });

  it('listening: 1, and 1 to stop', async () => {
    const { workbook, host, tripsOf } = await opened();
    const [begun, stop] = await tripsOf(() => workbook.watch(() => undefined));
    expect(host.listenedTo.length).toBeGreaterThan(0);
    const [stopped] = await tripsOf(stop);
    expect([begun, stopped]).toEqual([1, 1]);
    expect(host.listenedTo).toEqual([]);
  });

  it('hearing of a change on a known sheet: none', async () => {
    const { workbook, hands, tripsOf } = await opened();
    const heard: unknown[] = [];
    await workbook.watch((change) => heard.push(change));
    expect((await tripsOf(() => hands.edit(areaAt('A2', 1, 1), 'x', 'elsewhere')))[0]).toBe(0);
    expect(heard).toHaveLength(1);
  });

  it.each<[string, Step[], { plan: number; write: number; revert: number }]>([
    [
      'the press of a group of rows',
      [{ kind: 'cells', area: areaAt('C2', 2, 1), contents: [['Bay B'], ['Bay B']] }],
      { plan: 1, write: 2, revert: 2 },
    ],
    ['the shop sheet with its table, stamp and name', addShop, { plan: 1, write: 2, revert: 2 }],
    [
      'check columns beside a list',
      [
        { kind: 'column', table: 'List', heading: 'Verdict', contents: [{ formula: '=1+1' }] },
        { kind: 'column', table: 'List', heading: 'Note', contents: [{ formula: '=1+1' }] },
      ],
      { plan: 1, write: 2, revert: 2 },
    ],
  ])('writing %s', async (_, steps, expected) => {
    const { workbook, host, tripsOf } = await opened();
    const [planned, plan] = await tripsOf(() => workbook.plan(steps));
    const [written, revert] = await tripsOf(() => workbook.write(plan, { confirmed: true }));
    const [taken] = await tripsOf(() => revert.run());
    expect({ plan: planned, write: written, revert: taken }).toEqual(expected);
    await expect.poll(() => host.keptObjects).toBe(0);
  });

  it('refusing for want of a yes: none', async () => {
    const { workbook, tripsOf } = await opened();
    const [, plan] = await tripsOf(() =>
      workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), contents: [['x']] }]),
    );
    expect((await tripsOf(() => workbook.write(plan).catch(() => undefined)))[0]).toBe(0);
  });
});
