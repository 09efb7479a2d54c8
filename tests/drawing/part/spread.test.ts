import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../src/drawing/part/spread.js';

describe('labels along a line', () => {
  it('stand where they belong when they have room', () => {
    expect(
      spread(
        [
          { at: 50, room: 20 },
          { at: 20, room: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([50, 20]);
  });

  it('move no farther than the others make them', () => {
    expect(
      spread(
        [
          { at: 50, room: 20 },
          { at: 55, room: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([50, 70]);
    expect(
      spread(
        [
          { at: 95, room: 20 },
          { at: 96, room: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([70, 90]);
  });

  it('are none over another and all between the ends, or there is no room for all', () => {
    const wanted = fc.record({
      at: fc.integer({ min: -20, max: 520 }),
      room: fc.integer({ min: 5, max: 80 }),
    });
    fc.assert(
      fc.property(fc.array(wanted, { minLength: 1, maxLength: 20 }), (labels) => {
        const total = labels.reduce((sum, { room }) => sum + room, 0);
        const places = spread(labels, 0, 500);
        expect(places === undefined).toBe(total > 500);
        const spans = (places ?? [])
          .map(
            (middle, at) =>
              [middle - (labels[at]?.room ?? 0) / 2, middle + (labels[at]?.room ?? 0) / 2] as const,
          )
          .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
        spans.forEach(([from, to], at) => {
          expect(from).toBeGreaterThanOrEqual((spans[at - 1]?.[1] ?? 0) - 1e-9);
          expect(to).toBeLessThanOrEqual(500 + 1e-9);
        });
      }),
    );
  });
});
