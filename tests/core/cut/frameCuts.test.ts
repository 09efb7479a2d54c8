import { describe, expect, it } from 'vitest';
import { type Frame, frameCuts } from '../../../src/core/cut/frameCuts.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const frame: Frame = { widthMm: 1000, heightMm: 600, barMm: 50, kerfMm: 0 };

describe('frameCuts', () => {
  it.each([
    ['Width', { widthMm: 100 }],
    ['Height', { heightMm: 99 }],
  ] as const)('refuses a frame without an opening by its %s', (argument, change) => {
    expect(refusal(() => frameCuts({ ...frame, ...change })).argument).toBe(argument);
  });

  it('gives two kinds of two pieces', () => {
    expect(frameCuts(frame)).toMatchObject([
      { piece: 'top and bottom', qty: 2, longMm: 1000, pushMm: 1000 },
      { piece: 'sides', qty: 2, longMm: 600, pushMm: 600 },
    ]);
    expect(frameCuts(frame).map(({ shortMm }) => Math.round(shortMm * 1e6) / 1e6)).toEqual([900, 500]);
  });

  it('gives four alike of a square one', () => {
    expect(frameCuts({ ...frame, heightMm: 1000 })).toMatchObject([
      { piece: 'all sides', qty: 4, longMm: 1000 },
    ]);
  });

  it('lays the leg of each end of an angle, the other way for toes out; of flats none', () => {
    expect(frameCuts({ ...frame, toes: 'in' })[0]?.legs).toEqual({ left: 'up', right: 'down' });
    expect(frameCuts({ ...frame, toes: 'out' })[1]?.legs).toEqual({ left: 'down', right: 'up' });
    expect(frameCuts(frame)[0]).not.toHaveProperty('legs');
  });

  it('shows its working, the length of bar last', () => {
    const working = new Working();
    const pieces = frameCuts({ ...frame, kerfMm: 10 }, working);
    const lengthMm = pieces.reduce((sum, { qty, pushMm }) => sum + qty * pushMm, 0);
    expect(lengthMm).toBeCloseTo(2 * (1000 + 600) + 4 * Math.SQRT2 * 10, 9);
    expect(working.steps.at(-1)?.result.value).toBe(lengthMm);
    expect(working.steps.map(({ title }) => title)).not.toContain('Hands of the two ends');
  });

  it('tells the hands of angles in its working', () => {
    const working = new Working();
    frameCuts({ ...frame, toes: 'out' }, working);
    expect(working.steps[0]?.result.value).toBe('left end right-hand, leg down; right end left-hand, leg up');
  });
});
