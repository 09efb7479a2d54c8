// @vitest-environment node
// An edit of one row checks that row again, and no other.
import { describe, expect, it, vi } from 'vitest';
import type { HostInput } from '../../../src/functions/descriptor/hostValue.js';

const counted = vi.hoisted(() => ({ checks: 0 }));
vi.mock('../../../src/core/row/checkRow.js', async (original) => {
  const whole = await original<typeof import('../../../src/core/row/checkRow.js')>();
  return {
    ...whole,
    checkedPart: (...given: Parameters<typeof whole.checkedPart>) => {
      counted.checks += 1;
      return whole.checkedPart(...given);
    },
  };
});
const { readShop } = await import('../../../src/core/shop/readShop.js');
const { shopTables } = await import('../../support/sampleShop.js');
const { SheetRuntime } = await import('../../support/sheetRuntime.js');

const shop = readShop(shopTables());
const sheet = new SheetRuntime(shop);
const headings = ['Mark', 'Section', 'Grade', 'Length'];
const listOf = (lengths: readonly number[]): HostInput => [
  headings,
  ...lengths.map((length, at) => [`C${at}`, 'FB 3/8x4', 'A36', length]),
];

function checksOf(list: HostInput, items: string): number {
  const before = counted.checks;
  sheet.call('LISTCHECK', list, shop.stamp, items);
  return counted.checks - before;
}

describe('a list that is calculated again', () => {
  const lengths = Array.from({ length: 60 }, (_, at) => 6 + at / 8);
  const changed = lengths.map((length, at) => (at === 20 ? 99 : length));

  it('checks the rows that are not as they were', () => {
    expect(checksOf(listOf(lengths), 'verdict')).toBe(60);
    expect(checksOf(listOf(lengths), 'verdict')).toBe(0);
    expect(checksOf(listOf(changed), 'verdict')).toBe(1);
    expect(checksOf(listOf(lengths), 'use')).toBe(60);
  });

  it('comes to what each row comes to by itself', () => {
    const list = listOf(changed) as (string | number)[][];
    for (let call = 0; call < 2; call++) {
      const [, ...rows] = sheet.call('LISTCHECK', list, shop.stamp, 'mass, verdict') as unknown[][];
      expect(rows).toEqual(
        list
          .slice(1)
          .map(
            (row) =>
              (sheet.call('ROWCHECK', [headings], [row], shop.stamp, 'mass, verdict') as unknown[][])[0],
          ),
      );
    }
  });
});
