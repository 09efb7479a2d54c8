// A plate of 300 × 100 mm.
import { describe, expect, it } from 'vitest';
import { bentSpans } from '../../../src/core/part/bentSpans.js';
import { flangeBeside } from '../../../src/core/part/flangeBeside.js';
import type { OutlineInput } from '../../../src/core/part/outlineInput.js';
import { outlineFor } from '../../support/face.js';

const kind = 'sheared';

function flangeAt(atMm: number, side: -1 | 1, changes: Partial<OutlineInput> = {}) {
  const outline = outlineFor(changes);
  const line = { runs: 'across', atMm } as const;
  const flanges = bentSpans(outline, line).map((span) => flangeBeside(line, span, side, outline.edges));
  return flanges.map((flange) => flange && { mm: flange.mm, is: flange.end.cause.is, at: flange.at });
}

describe('flangeBeside', () => {
  it('ends at the end of a plate without cuts', () => {
    expect(flangeAt(80, -1)).toMatchObject([{ mm: 80, is: 'left end' }]);
    expect(flangeAt(80, 1)).toMatchObject([{ mm: 220, is: 'right end' }]);
  });

  it('ends at a clip that leaves less of it', () => {
    const clips = [{ end: 'left', side: 'top', alongMm: 30, acrossMm: 20, kind }] as const;
    const [flange] = flangeAt(80, -1, { clips });
    expect(flange).toMatchObject({ is: 'clip' });
    expect(flange?.mm).toBeCloseTo(50, 9);
    expect(flange?.at[1].y).toBeCloseTo(100, 9);
  });

  it('ends at a notch beside the line, and not at one across from nothing that is bent', () => {
    const place = { at: 'edge', side: 'bottom', centerMm: 40 } as const;
    const notch = { shape: 'rectangle', place, widthMm: 20, depthMm: 30, kind } as const;
    expect(flangeAt(80, -1, { notches: [notch] })).toMatchObject([{ mm: 30, is: 'notch' }]);
    expect(flangeAt(80, 1, { notches: [notch] })).toMatchObject([{ mm: 220, is: 'right end' }]);
    // On the edge of the notch it is bent above the notch only, and there the flange reaches the end.
    expect(flangeAt(50, -1, { notches: [notch] })).toMatchObject([{ mm: 50, is: 'left end' }]);
    expect(flangeAt(50.5, -1, { notches: [notch] })).toMatchObject([{ mm: 0.5, is: 'notch' }]);
  });

  it('is nothing where a cut meets the bend', () => {
    const clips = [{ end: 'left', side: 'top', alongMm: 90, acrossMm: 20, kind }] as const;
    const [flange] = flangeAt(80, -1, { clips });
    expect(flange?.mm).toBeCloseTo(0, 9);
    expect(flange?.is).toBe('clip');
  });
});
