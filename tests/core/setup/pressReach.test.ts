import { describe, expect, it } from 'vitest';
import { pressReach } from '../../../src/core/setup/pressReach.js';
import { findPress } from '../../../src/core/shop/findPress.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const inch = 25.4;
const pressWith = (cells: PressCells) => findPress('Bay A', 'Press', shopWith(cells));
const gauged = {
  'Punch throat': 12,
  'Fence least reach': '1/2',
  'Fence greatest reach': 10,
  'Left stop least reach': 1,
  'Left stop greatest reach': 30,
  'Right stop least reach': 2,
  'Right stop greatest reach': 40,
};

describe('the reach of a press', () => {
  it('is that of its gauges', () => {
    expect(pressReach(pressWith(gauged), 8 * inch, false)).toEqual({
      reach: {
        fence: { least: inch / 2, most: 10 * inch },
        leftStop: { least: inch, most: 30 * inch },
        rightStop: { least: 2 * inch, most: 40 * inch },
      },
      unknown: [],
    });
  });

  it('is no farther than the throat, where the fence stands in it', () => {
    const { reach } = pressReach(pressWith({ ...gauged, 'Punch throat': 6 }), 8 * inch, false);
    expect(reach.fence).toEqual({ least: inch / 2, most: 6 * inch });
  });

  it('leaves to the throat what is beyond the punch, where a heel lies at the fence', () => {
    const { reach } = pressReach(pressWith({ ...gauged, 'Punch throat': 6 }), 8 * inch, true);
    expect(reach.fence.least).toBeCloseTo(2 * inch, 9);
    expect(reach.fence.most).toBe(10 * inch);
    expect(pressReach(pressWith(gauged), 8 * inch, true).reach.fence.least).toBe(inch / 2);
  });

  it('has no limit where there is none, where a cell is blank and where it cannot be read; the last two are named', () => {
    const cells = {
      ...gauged,
      'Fence greatest reach': 'none',
      'Left stop least reach': '',
      'Left stop greatest reach': 'abc',
    };
    const { reach, unknown } = pressReach(pressWith({ ...cells, 'Punch throat': 'none' }), 8 * inch, false);
    expect(reach.fence.most).toBe(Infinity);
    expect(reach.leftStop).toEqual({ least: 0, most: Infinity });
    expect(unknown).toEqual(['leftStopLeast', 'leftStopGreatest']);
  });
});
