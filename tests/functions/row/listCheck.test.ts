import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import type { HostInput, HostValue } from '../../../src/functions/descriptor/hostValue.js';
import { rowsAtOnce } from '../../../src/functions/turns.js';
import { shopTables } from '../../support/sampleShop.js';
import { SheetError, SheetRuntime } from '../../support/sheetRuntime.js';

const shop = readShop(shopTables());
/** A program in which nobody waits for a turn. */
const alone = new SheetRuntime(shop);
const headings = ['Mark', 'Qty', 'Section', 'Grade', 'Length (mm)', 'Hole', 'Bolt', 'Edge'];

/** A page, in which others have their turn now and then. */
function page(onTurn: () => void = () => undefined): SheetRuntime {
  const sheet = new SheetRuntime(shop);
  sheet.runtime.giveWay = () => {
    onTurn();
    return Promise.resolve();
  };
  return sheet;
}

const row: fc.Arbitrary<HostValue[]> = fc.tuple(
  fc.constantFrom('C1', 'B2', ''),
  fc.constantFrom(1, 12, '3', 'many'),
  fc.constantFrom('FB 3/8x4', 'L3X3X1/4', 'PL1/2X6', 'C8X11.5', 'Clips', ''),
  fc.constantFrom('A36', 'A572-50', 'A99', null),
  fc.constantFrom(150, 1200, '12 in', '-'),
  fc.constantFrom('13/16', '', '2 @ 9/16', 45_000),
  fc.constantFrom(null, '3/4'),
  fc.constantFrom('1-1/2', null, true),
);
const many = (count: number): HostInput => [headings, ...fc.sample(row, { numRuns: count, seed: 7 })];

describe('LISTCHECK in a page', () => {
  it('answers a short list at once', () => {
    expect(page().call('LISTCHECK', many(rowsAtOnce), shop.stamp)).toEqual(
      alone.call('LISTCHECK', many(rowsAtOnce), shop.stamp),
    );
  });

  it('answers a long list later, with what it comes to at once', async () => {
    const list = fc.array(row, { minLength: rowsAtOnce + 1, maxLength: rowsAtOnce + 120 });
    const items = fc.constantFrom(null, 'verdict', 'use, note, mass');
    await fc.assert(
      fc.asyncProperty(list, items, async (rows, shown) => {
        const inputs = [[headings, ...rows], shop.stamp, shown] as const;
        const later = page().call('LISTCHECK', ...inputs);
        expect(later).toBeInstanceOf(Promise);
        expect(await later).toEqual(alone.call('LISTCHECK', ...inputs));
      }),
      { numRuns: 5 },
    );
  });

  it('gives others a turn before every 25 rows, and more often at the beginning', async () => {
    let turns = 0;
    await page(() => (turns += 1)).answer('LISTCHECK', many(1_230), shop.stamp);
    // 1, 2, 4, 8 and 16 rows, then 25 at a time.
    expect(turns).toBe(5 + Math.ceil((1_230 - 31) / 25));
  });

  it('shares the runtime with another list', async () => {
    const order: string[] = [];
    const [one, other] = ['one', 'other'].map((name) => page(() => order.push(name)));
    await Promise.all([one, other].map((sheet) => sheet?.answer('LISTCHECK', many(300), shop.stamp)));
    expect(order).toEqual(
      Array.from({ length: 5 + Math.ceil((300 - 31) / 25) }, () => ['one', 'other']).flat(),
    );
  });

  it('ends when the host cancels the call', async () => {
    const invocation: { functionName: string; onCanceled?: () => void } = { functionName: 'LISTCHECK' };
    let turns = 0;
    const sheet = page(() => {
      turns += 1;
      if (turns === 3) invocation.onCanceled?.();
    });
    const answer = sheet.answer('LISTCHECK', many(5_000), shop.stamp, null, invocation);
    await expect(answer).rejects.toThrow(/^The program stopped this call/);
    await expect(answer).rejects.toBeInstanceOf(SheetError);
    expect(turns).toBe(3);
  });

  it('refuses a list without its headings at once', () => {
    const list = [['Mark'], ...Array.from({ length: rowsAtOnce + 1 }, () => ['C1'])];
    expect(page().error('LISTCHECK', list, shop.stamp).message).toContain('Section');
  });

  it('shows its working, row by row, as it is at once', async () => {
    const call = ['WORKING', 'LISTCHECK', many(rowsAtOnce + 60), shop.stamp, 'force'] as const;
    expect(await page().answer(...call)).toEqual(await alone.answer(...call));
  });
});
