import { describe, expect, it } from 'vitest';
import type { Press, PressValue } from '../../../src/core/press/press.js';
import { pressItems } from '../../../src/core/press/item/pressItem.js';
import { shearMinimums } from '../../../src/core/press/shearMinimums.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import { leastPieceMm } from '../../../src/core/rule/leastPiece.js';
import { readSection } from '../../../src/core/section/readSection.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const press = (values: Press['values'] = {}): Press => ({ name: 'Bay A', values });
const minimums = (
  designation: string,
  lengthMm?: number,
  values: Press['values'] = {},
  working?: Working,
) => {
  const { section } = readSection(designation, 'Section', 'in');
  if (section.kind === 'channel') throw new Error('a channel is sawn');
  return shearMinimums(press(values), { section, ...(lengthMm === undefined ? {} : { lengthMm }) }, working);
};
const value = (mm: number): PressValue => ({ state: 'value', value: mm });
const isHeld = (designation: string, lengthMm: number) =>
  minimums(designation, lengthMm).every(
    ({ sizeMm, limit }) => limit.state === 'value' && (sizeMm ?? 0) >= limit.leastMm,
  );

describe('shearMinimums: limits', () => {
  it.each([
    ['FB 3/8x4', ['flatShearShortestPiece', 'flatShearNarrowestBar', 'flatShearThinnestBar']],
    ['L3X2X1/4', ['angleShearShortestPiece', 'angleShearSmallestLeg']],
    ['RB 3/4', ['barShearShortestPiece', 'barShearSmallestSize']],
    ['SQ 3/4', ['barShearShortestPiece', 'barShearSmallestSize']],
  ])('%s: %j, by practice where the press says nothing', (designation, keys) => {
    const found = minimums(designation, 300);
    expect(found.map(({ key }) => key)).toEqual(keys);
    for (const { limit } of found) expect(limit).toMatchObject({ state: 'value', from: 'practice' });
  });

  it('takes the value of the press before practice, none as no limit, and keeps a cell that cannot be read', () => {
    const limitOf = (given: PressValue) =>
      minimums('RB 3/4', 300, { barShearShortestPiece: given })[0]?.limit;
    expect(limitOf(value(10))).toEqual({ state: 'value', leastMm: 10, from: 'press' });
    expect(limitOf({ state: 'none' })).toEqual({ state: 'none' });
    const bad = { state: 'bad', failure: refusal(() => readLength('abc', 'Length', 'in')) } as const;
    expect(limitOf(bad)).toEqual(bad);
    expect(limitOf({ state: 'unknown' })).toMatchObject({ from: 'practice' });
  });

  it('has no size for the piece where the row gives no length', () => {
    expect(minimums('FB 3/8x4')[0]).not.toHaveProperty('sizeMm');
    expect(minimums('FB 3/8x4')[1]).toMatchObject({ sizeMm: 101.6 });
  });

  it('takes the shorter leg of an angle', () => {
    expect(minimums('L3X2X1/4', 300)[1]?.sizeMm).toBeCloseTo(50.8, 9);
  });
});

describe('shearMinimums: values', () => {
  it('a bar of 3/4 in cut 1/4 in long is too short, and ordinary parts are not', () => {
    expect(isHeld('RB 3/4', 6.35)).toBe(false);
    for (const [designation, inches] of [
      ['RB 3/4', 1.5],
      ['RB 1/4', 6],
      ['SQ 1/2', 12],
      ['L1X1X1/8', 3],
      ['L3X3X1/4', 2],
      ['FB 1/8x1/2', 4],
      ['FB 3/8x4', 1],
      ['PL1/2X6', 6],
    ] as const) {
      expect(isHeld(designation, inches * 25.4), designation).toBe(true);
    }
  });

  it('takes for the piece what the rule gives, and for the sizes what the items say a blank stands for', () => {
    const practice = [...minimums('FB 3/8x4', 300), ...minimums('L3X2X1/4', 300), ...minimums('RB 3/4', 300)];
    for (const { key, limit } of practice) {
      const item = pressItems.find((each) => each.key === key);
      const told = item && 'whenBlank' in item ? item.whenBlank.mm : '';
      if (limit.state !== 'value') throw new Error('no value');
      if (key.endsWith('ShortestPiece')) expect(told).toMatch(/^twice the thickness or size, at least 25 mm/);
      else expect(limit.leastMm).toBe(readLength(told, 'When blank', 'mm', 'thickness'));
    }
    const leastMm = leastPieceMm({ thicknessMm: 20 });
    expect(minimums('RB 20 mm', 300)[0]?.limit).toMatchObject({ leastMm });
  });

  it('shows the practice it takes', () => {
    const working = new Working();
    minimums('FB 3/8x4', 300, {}, working);
    expect(working.steps.map(({ title }) => title)).toEqual(['Shortest piece']);
  });
});
