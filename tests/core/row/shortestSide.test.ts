import { describe, expect, it } from 'vitest';
import { shortestSide } from '../../../src/core/row/shortestSide.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';

type Row = Parameters<typeof shortestSide>[0];
const deg = Math.PI / 180;

function side(section: string, row: Partial<Omit<Row, 'section'>>) {
  const read = readAnySection(section, 'Section', 'mm').section;
  const found = shortestSide(
    { section: read, lengthMm: 300, miterLeftRad: 0, miterRightRad: 0, ...row },
    'mm',
  );
  return found && [found.least, found.most].map((mm) => Number(mm.toFixed(6)));
}

describe('shortestSide', () => {
  it('is the length of a square part, and not known without one', () => {
    expect(side('FB 10x100', {})).toEqual([300, 300]);
    expect(
      shortestSide(
        { section: readAnySection('FB 10x100', 'Section', 'mm').section, miterLeftRad: 0, miterRightRad: 0 },
        'mm',
      ),
    ).toBeUndefined();
  });

  it('is shorter by the width where one end is mitered at 45°, whichever side is long', () => {
    expect(side('FB 10x100', { miterLeftRad: 45 * deg })).toEqual([200, 200]);
  });

  it('is a trapezoid by one long side, a parallelogram by two, either where they are not given', () => {
    const both = { miterLeftRad: 45 * deg, miterRightRad: 45 * deg };
    expect(side('FB 10x100', { ...both, longSide: { left: 'top', right: 'top' } })).toEqual([100, 100]);
    expect(side('FB 10x100', { ...both, longSide: { left: 'top', right: 'bottom' } })).toEqual([200, 200]);
    expect(side('FB 10x100', both)).toEqual([100, 200]);
    expect(side('FB 10x100', { ...both, longSide: { left: 'top' } })).toEqual([100, 200]);
  });

  it('goes by the leg that is mitered, by either where it is not given, by the wider of both', () => {
    const angle = { miterLeftRad: 45 * deg };
    expect(side('L100x60x8', angle)).toEqual([200, 240]);
    expect(side('L100x60x8', { ...angle, miterLeg: 'short' })).toEqual([240, 240]);
    expect(side('L100x60x8', { ...angle, miterLeg: 'both' })).toEqual([200, 200]);
  });

  it('is not above zero where the miters meet, and leaves bars alone, which are mitered by a saw', () => {
    const both = { miterLeftRad: 45 * deg, miterRightRad: 45 * deg, lengthMm: 150 };
    expect(side('FB 10x100', both)?.[0]).toBe(-50);
    expect(side('RB 50', both)).toEqual([150, 150]);
  });
});
