import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { runSetupWords } from '../../../src/core/say/runSetupWords.js';
import { listToolOrder } from '../../../src/core/work/listToolOrder.js';
import { runSetup } from '../../../src/core/work/runSetup.js';
import { workOnChecked } from '../../../src/core/work/workOnRow.js';
import { refusal } from '../../support/refusal.js';
import { type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';

const tools: CellValue[][] = [
  ['Press', 'Kind', 'Size', 'Holder'],
  ['any', 'punch', '13/16', 'Sleeve 1'],
  ['any', 'punch', '11/16', 'Sleeve 1'],
  ['any', 'punch', '9/16', 'Sleeve 2'],
  ['any', 'die', '27/32', null],
  ['any', 'die', '23/32', null],
  ['any', 'die', '19/32', null],
];
const titles = [
  'Mark',
  'Section',
  'Grade',
  'Length',
  'Hole',
  'Holes',
  'Edge',
  'End',
  'Notch width',
  'Notch depth',
  'Press',
];
const plain = (mark: string): CellValue[] => [
  mark,
  'FB 3/8x6',
  'A36',
  12,
  null,
  null,
  null,
  null,
  null,
  null,
  'Bay A',
];
const holed = (mark: string, hole: string): CellValue[] =>
  plain(mark).map((cell, at) => (at >= 4 && at <= 7 ? ([hole, 1, 3, 4][at - 4] ?? null) : cell));
const notched = (mark: string): CellValue[] =>
  plain(mark).map((cell, at) => (at === 8 || at === 9 ? 1 : cell));

const times: PressCells = { 'Minutes per tool change': 6, 'Minutes per holder change': 10 };

function shopOf(setup: string, cells: PressCells = times, more: Record<string, CellValue> = {}) {
  return shopWith(cells, { tools, settings: settingTable({ Units: 'in', Setup: setup, ...more }) });
}

function run(rows: CellValue[][], shop = shopOf('shared over a run')) {
  const [press] = shop.presses;
  if (!press) throw new Error('the sample has no press');
  return runSetup(listToolOrder([titles, ...rows], press, shop), press, shop);
}

/** The minutes of some rows, one by one. */
function minutes(rows: CellValue[][], shop: ReturnType<typeof shopOf>): number {
  const headings = readHeadings(titles);
  return rows.reduce((sum, cells) => {
    const work = workOnChecked(checkedPart(cells, headings, shop), shop);
    if (work.is !== 'timed') throw new Error(`${String(cells[0])} has no time`);
    return sum + work.time.seconds / 60;
  }, 0);
}

const list = [
  holed('A', '13/16'),
  holed('D', '9/16'),
  holed('B', '13/16'),
  notched('N'),
  holed('C', '11/16'),
  plain('P'),
];

describe('the changes of a run', () => {
  it('are those of its best order, with what it begins with: three punches in two sleeves, and the notcher', () => {
    // 4 × 6 + 2 × 10 min
    expect(run(list)).toMatchObject({ toolChanges: 4, holderChanges: 2, seconds: 44 * 60, invented: [] });
  });

  it('and the rows that share them have every change once', () => {
    const [each, shared] = [shopOf('each row'), shopOf('shared over a run')];
    // Each row for itself: 5 sets of tools and 4 sleeves, 5 × 6 + 4 × 10 min.
    expect(minutes(list, each) - minutes(list, shared)).toBeCloseTo(70, 9);
    // 13/16 twice: one set, and two sleeves, are saved by the run.
    const saved = minutes(list, each) - (minutes(list, shared) + run(list).seconds / 60);
    expect(saved).toBeCloseTo(6 + 2 * 10, 9);
  });

  it('of one row are what the row has by itself, at any efficiency', () => {
    for (const row of [holed('A', '13/16'), notched('N'), plain('P')]) {
      const more = { Efficiency: 0.8 };
      const shared = shopOf('shared over a run', times, more);
      const once = minutes([row], shared) + run([row], shared).seconds / 60;
      expect(once).toBeCloseTo(minutes([row], shopOf('each row', times, more)), 9);
    }
  });

  it('name the times that are invented, and refuse one that cannot be read', () => {
    expect(run(list, shopOf('each row', {}))).toMatchObject({
      shared: false,
      invented: ['Minutes per tool change', 'Minutes per holder change'],
    });
    expect(run([notched('N')], shopOf('each row', {})).invented).toEqual(['Minutes per tool change']);
    expect(refusal(() => run(list, shopOf('each row', { 'Minutes per tool change': 'long' }))).received).toBe(
      'long',
    );
  });

  it('are told with what to do with them', () => {
    expect(runSetupWords(run(list))).toBe(
      'Setting up 4 sets of tools and 2 holders takes 44 min in all. The rows leave it to the run: add it once.',
    );
    expect(runSetupWords(run([notched('N')], shopOf('each row', {})))).toBe(
      'Setting up 1 set of tools takes 5 min in all. The rows have their own changes in their minutes: do not add it. Invented until the shop gives its own: Minutes per tool change.',
    );
    expect(runSetupWords(run([plain('P')]))).toBe('');
  });
});
