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

  it.each([
    ['across', -1],
    ['across', 1],
    ['along', -1],
    ['along', 1],
  ] as const)(
    'is measured square to a line %s, where a slanting boundary comes nearest: side %d',
    (runs, side) => {
      const line = { runs, atMm: 80 };
      const place = (alongMm: number, beyondMm: number) => {
        const offMm = 80 + side * beyondMm;
        return runs === 'across' ? { x: offMm, y: alongMm } : { x: alongMm, y: offMm };
      };
      const bound = (from: [number, number], to: [number, number]) => ({
        from: place(...from),
        to: place(...to),
      });
      const span = { fromMm: 20, toMm: 70 };
      // From 100 beyond the line at 0 along it to 50 at 100, and back: over the span it lies from 90 to 65 beyond.
      for (const [falling, rising] of [
        [bound([0, 100], [100, 50]), bound([0, 50], [100, 100])],
        [bound([100, 50], [0, 100]), bound([100, 100], [0, 50])],
      ] as const) {
        expect(flangeBeside(line, span, side, [falling])).toEqual({
          mm: 65,
          end: falling,
          at: [place(70, 0), place(70, 65)],
        });
        expect(flangeBeside(line, span, side, [falling, rising])).toEqual({
          mm: 60,
          end: rising,
          at: [place(20, 0), place(20, 60)],
        });
      }
      // Across from none of the span, or on the other side of the line.
      const others = [bound([0, 10], [20, 10]), bound([70, 10], [90, 10]), bound([0, -10], [100, -10])];
      expect(flangeBeside(line, span, side, others)).toBeUndefined();
      expect(flangeBeside(line, span, side, [bound([0, 0], [100, 0])])).toBeUndefined();
      // A boundary that crosses the bend, or begins on it, leaves nothing.
      expect(flangeBeside(line, span, side, [bound([0, -50], [100, 50])])?.mm).toBe(0);
      expect(flangeBeside(line, span, side, [bound([20, 0], [70, 50])])).toMatchObject({
        mm: 0,
        at: [place(20, 0), place(20, 0)],
      });
    },
  );

  it('is nothing where a cut meets the bend', () => {
    const clips = [{ end: 'left', side: 'top', alongMm: 90, acrossMm: 20, kind }] as const;
    const [flange] = flangeAt(80, -1, { clips });
    expect(flange?.mm).toBeCloseTo(0, 9);
    expect(flange?.is).toBe('clip');
  });
});
