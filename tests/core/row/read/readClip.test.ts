import { describe, expect, it } from 'vitest';
import { readClip } from '../../../../src/core/row/read/readClip.js';
import { refusalText } from '../../../support/refusal.js';
import { inInches } from './support.js';

const read = (cell: string | number) => inInches(readClip(cell, 'Corner clip', 'in'));

describe('the size of a corner cut off', () => {
  it.each([1, '1', '1"', '1 in', '1x1', '1 x 1', '1 x 45°', '1x45 deg', '1 @ 45°', '1" X 45 DEG.'])(
    '%s is 1 both ways',
    (cell) => {
      expect(read(cell)).toEqual({ along: 1, across: 1 });
    },
  );

  it('is along the length first', () => {
    expect(read('3/4x1-1/2')).toEqual({ along: 0.75, across: 1.5 });
    expect(read('1x1/2"')).toEqual({ along: 1, across: 0.5 });
  });

  it('has the unit behind its last size', () => {
    expect(readClip('20x30 mm', 'Corner clip', 'in')).toEqual({ alongMm: 20, acrossMm: 30 });
    expect(read('1\'x6"')).toEqual({ along: 12, across: 6 });
  });

  it('by 45 may be an angle or a length', () => {
    expect(refusalText(() => read('3/4 x 45'))).toBe(
      "Corner clip: '3/4 x 45' may be 3/4 at 45° or 3/4 by 45 in. Write 3/4 for 45°, or 3/4x45 in.",
    );
    expect(readClip('25x45 mm', 'Corner clip', 'mm')).toEqual({ alongMm: 25, acrossMm: 45 });
  });

  it.each(['1x1x1', '1x', 'x1', 'x', '1x2 x 45°', 'C1', 'R1', '1 at 45', '1 x 30°', '1-', '-1'])(
    '%s is refused',
    (cell) => {
      expect(refusalText(() => read(cell))).toMatch(/^Corner clip: .+\. .+\.$/);
    },
  );
});
