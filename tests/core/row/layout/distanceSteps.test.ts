import { describe, expect, it } from 'vitest';
import { type Row, stepsOf } from '../../../support/checkedRow.js';
import { shopWith } from '../../../support/sampleShop.js';

const row: Row = {
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: 2,
  End: '1-3/16',
  'End kind': 'sheared',
  Pitch: 3,
  Press: 'Bay A',
};

describe('the steps of distances', () => {
  it('show the worst of each kind beside its limit and source, what fails first', () => {
    const [first, ...others] = stepsOf(row, shopWith());
    // AISC 360-05 Table J3.4, sheared edge, bolt 3/4 in: 1-1/4 in.
    expect(first).toMatchObject({ title: 'Hole: edge distance by code', result: { value: 'Edge short' } });
    expect(first?.source).toMatch(/^AISC 360-05 Table J3\.4/);
    const values = Object.fromEntries(first?.values.map(({ symbol, value }) => [symbol, value]) ?? []);
    expect(values.e).toBeCloseTo(1.1875 * 25.4, 6);
    expect(values.limit).toBeCloseTo(1.25 * 25.4, 6);
    expect(values.bolt).toBe('3/4 in');
    const titles = others.map(({ title }) => title);
    expect(titles).toEqual(
      expect.arrayContaining(['Hole: steel left at the edge', 'Hole: spacing by code', 'Share of rating']),
    );
  });

  it('show both ends of what a row leaves open', () => {
    const steps = stepsOf({ ...row, End: 2, Pitch: null }, shopWith());
    const spacing = steps.find(({ title }) => title === 'Hole: spacing by code');
    const symbols = spacing?.values.map(({ symbol }) => symbol) ?? [];
    expect(symbols).toEqual(expect.arrayContaining(['e lowest', 'e highest']));
    expect(spacing?.result.value).toBe('OK so far');
  });

  it('show what fails by one of several choices', () => {
    const clip = { ...row, End: '1-1/4', Holes: 1, Edge: '1-1/4', 'Corner clip': 2, Corners: 1 };
    const short = stepsOf(clip, shopWith()).filter(({ result }) => result.value === 'Edge short');
    expect(short.map(({ title }) => title)).toContain('Hole: edge distance by code');
  });
});
