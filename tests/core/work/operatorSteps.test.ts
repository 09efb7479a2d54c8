import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { stepNotes, stepTitle } from '../../../src/core/say/stepWords.js';
import { operatorSteps } from '../../../src/core/work/operatorSteps.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

/** What the steps of a title say, of a row on Bay A. */
function told(title: string, row: Record<string, CellValue>, press: PressCells = {}): string[] {
  const whole = { Mark: 'P1', Qty: 4, Grade: 'A36', Length: 12, Press: 'Bay A', ...row };
  const shop = shopWith(press);
  const checked = checkedPart(Object.values(whole), readHeadings(Object.keys(whole)), shop);
  const made = operatorSteps(checked, shop);
  if (made.is !== 'steps') throw new Error(JSON.stringify(made));
  return made.steps.filter((step) => stepTitle(step) === title).map((step) => stepNotes(step, 'in'));
}

describe('the steps of an operator', () => {
  const slotted = { Section: 'FB 3/8x3', Hole: '13/16x1', Bolt: '3/4', 'Holes at': 'x2 y1-1/2' };

  it('key a slot the way the row has it, and ask where it does not', () => {
    const keyed = 'Key punch and die to the same direction';
    expect(told('Tools', { ...slotted, Slot: 'across' })).toEqual([
      `${keyed}: the slot runs across the part.`,
    ]);
    expect(told('Tools', { ...slotted, Slot: 'along' })).toEqual([`${keyed}: the slot runs along the part.`]);
    expect(told('Tools', slotted)).toEqual([
      `${keyed}. The list does not say which way the slot lies: ask before punching.`,
    ]);
  });

  it('key slots of one size again where they run both ways', () => {
    const second = { 'Hole 2': '13/16x1', 'Bolt 2': '3/4', 'Holes at 2': 'x9 y1-1/2', 'Slot 2': 'across' };
    const [tools] = told('Tools', { ...slotted, Slot: 'along', ...second });
    expect(tools).toContain('some run along the part, some across it; key both again between them.');
  });

  // A bar of 20 ft is 240 in and, 1/4 by 4, 240 in³ of steel at 0.2836 lb/in³: 68 lb.
  it('mind a bar that the supports do not carry, though they carry its pieces', () => {
    const row = { Section: 'FB 1/4x4', Qty: 4 };
    const bars = `1 bar of FB1/4X4, A36, 20'-0" long.`;
    expect(told('Pull stock', row, { 'Longest bar': 240, 'Heaviest bar': 69 })).toEqual([bars]);
    expect(told('Pull stock', row, { 'Longest bar': 144, 'Heaviest bar': 60 })).toEqual([
      `${bars} The bar is over the longest bar that this press carries, 12'-0": cut it down first. The bar is over the heaviest bar that this press carries, 60 lb: cut it down first.`,
    ]);
  });

  it('say that a part longer than the bars of the shop is a bar of its own', () => {
    expect(told('Pull stock', { Section: 'FB 1/4x4', Qty: 2, Length: 252 })).toEqual([
      `2 bars of FB1/4X4, A36, 21'-0" long. The bars of the shop are 20'-0" long: it is a bar of its own.`,
    ]);
  });

  const notched = { Section: 'FB 1/4x4', 'Notch width': 2, 'Notch depth': 1, Notches: 1 };

  it('tell where a notch is, and ask where the row does not say it', () => {
    const notch = 'Notch 2 in wide, 1 in deep.';
    const drill = 'Drill the inside corners first, so that they do not tear.';
    for (const [at, words] of [
      ['top edge 6', 'At the top edge, its middle 6 in from the left end.'],
      ['left end 2', 'At the left end, its middle 2 in from the bottom edge.'],
      ['bottom right', 'At the bottom right corner.'],
      [null, 'The list does not say where: ask before cutting.'],
    ] as const)
      expect(told('Mark out', { ...notched, 'Notch at': at })).toEqual([`${notch} ${words} ${drill}`]);
  });

  it('tell which corners are clipped', () => {
    const clipped = { Section: 'FB 1/4x4', 'Corner clip': 1 };
    expect(told('Mark out', { ...clipped, Corners: 1, 'Clip at': 'top right' })).toEqual([
      'Clip 1 in along, 1 in across. At the top right corner.',
    ]);
    expect(told('Mark out', { ...clipped, Corners: 4 })).toEqual([
      'Clip 1 in along, 1 in across. At all four corners.',
    ]);
  });

  // Eight to ten times 1/4 is 2 to 2-1/2; of 2, 3 and 4 on hand the next to 10 t is 3.
  it('name the V opening and the lines of bends', () => {
    const bent = { Section: 'PL 1/4x4', Bends: 1, 'Bend length': 4, 'Bend at': 'left end 5' };
    expect(told('Tools', bent)).toEqual(['V opening 3 in.']);
    expect(told('Mark out', bent)).toEqual([
      'Bend line 5 in from the left end. Which way and how far: see the drawing.',
    ]);
  });

  it('name what hangs down beside the die', () => {
    const row = { Hole: '9/16', Bolt: '1/2', Length: 40, 'Holes at': 'x4 y3' };
    expect(told('Setting 1', { ...row, Section: 'C6X8.2', Leg: 'web' })[0]).toContain(
      'Web flat on the die, the flanges 1.92 in hanging down.',
    );
    expect(told('Setting 1', { ...row, Section: 'L 5x5x1/4' })[0]).toContain(
      'Leg flat on the die, the other 5 in hanging down.',
    );
  });

  it('say that mirrored pieces are not all made as the steps say', () => {
    const row = { Section: 'L 3x3x1/4', Hole: '13/16', Bolt: '3/4', End: 2, Gage: '1-3/4', Qty: '2R 2L' };
    expect(told('Run', row).at(-1)).toBe(
      'The burr is underneath. 2 right-hand and 2 left-hand: the steps are for one hand, as the list has it; mirror them for the other.',
    );
    expect(told('Run', { ...row, Qty: 4 }).at(-1)).toBe('The burr is underneath. 4 pieces in all.');
  });
});
