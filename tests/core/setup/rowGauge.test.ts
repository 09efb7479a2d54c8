import { describe, expect, it } from 'vitest';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowGauge, type RowGauge, type RowToGauge } from '../../../src/core/setup/rowGauge.js';
import { findPress } from '../../../src/core/shop/findPress.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { shopWith } from '../../support/sampleShop.js';

const inch = 25.4;
const shop = shopWith();
const press = findPress('Bay A', 'Press', shop);

function gauges(cells: Record<string, CellValue>, more: Partial<RowToGauge> = {}): RowGauge[] {
  const given = { Grade: 'A36', ...cells };
  const { part } = checkedPart(Object.values(given), readHeadings(Object.keys(given)), shop);
  if (!part) throw new Error('the row was not laid out');
  return rowGauge({ row: part.row, layouts: part.layouts, press, shop, ...more });
}

const inches = (mm: number) => Number((mm / inch).toFixed(6));

/** Each setting with its holes: `left 2, 3: 1 as it lies`. */
const shown = ([first]: RowGauge[]) =>
  first?.settings.map(({ stop, stopMm, fenceMm, hits }) => {
    const holes = hits.map(({ group, index, turn }) => `${group + 1}.${index} ${turn}`).join(', ');
    return `${stop} ${inches(stopMm)}, ${inches(fenceMm)}: ${holes}`;
  });

const plate = { Section: 'PL1/2X10', Length: 12, Hole: '1-5/16', 'Holes at': 'x2 y2; x10 y2; x2 y8; x10 y8' };

describe('the gauges of a plate', () => {
  it('are set twice for a hole in each corner', () => {
    expect(shown(gauges({ ...plate, Bolt: 'none' }))).toEqual([
      'left 2, 2: 1.2 half turn, 1.3 as it lies',
      'left 10, 2: 1.1 half turn, 1.4 as it lies',
    ]);
    expect(shown(gauges({ ...plate, Bolt: 'none' }, { turns: 'flip' }))).toHaveLength(1);
    expect(shown(gauges({ ...plate, Bolt: 'none' }, { turns: 'none' }))).toHaveLength(4);
  });

  it('have the top edge at the fence as it is drawn, and name end and edge of each hole', () => {
    const [{ settings } = { settings: [] }] = gauges({ ...plate, Bolt: 'none', 'Holes at': 'x2 y3' });
    expect(settings).toEqual([
      {
        stop: 'left',
        stopMm: 2 * inch,
        fenceMm: 177.8,
        hits: [{ group: 0, index: 1, turn: 'as it lies', end: 'left', edge: 'top' }],
      },
    ]);
    const [turned] = gauges({ ...plate, Bolt: 'none' });
    expect(turned?.settings[0]?.hits[0]).toEqual({
      group: 0,
      index: 2,
      turn: 'half turn',
      end: 'right',
      edge: 'bottom',
    });
  });

  it('are as many as its holes where bolts meet another part', () => {
    expect(shown(gauges({ ...plate, Hole: '13/16', Bolt: '3/4' }))).toHaveLength(4);
    // The bolt is read from its standard hole.
    expect(shown(gauges({ ...plate, Hole: '13/16' }))).toHaveLength(4);
    // An anchor rod has 9/16 in to spare, an oversize hole 3/16 in: more than 1/16 in along and across.
    expect(shown(gauges({ ...plate, Bolt: '3/4' }))).toHaveLength(2);
    expect(shown(gauges({ ...plate, Hole: '15/16', Bolt: '3/4' }))).toHaveLength(2);
  });

  it('are not turned with a miter', () => {
    const mitered = { ...plate, Bolt: 'none', 'Miter left': 30, 'Long side': 'bottom' };
    expect(shown(gauges(mitered))).toHaveLength(4);
  });

  it('are those of the groups asked for', () => {
    const two = { ...plate, Bolt: 'none', 'Hole 2': '2', 'Holes at 2': 'x6 y5', 'Bolt 2': 'none' };
    expect(shown(gauges(two))).toHaveLength(3);
    expect(shown(gauges(two, { groups: [1] }))).toEqual(['left 6, 5: 2.1 as it lies']);
  });
});

describe('places that the row does not give', () => {
  it('are no setting', () => {
    const [gauge] = gauges({ Section: 'PL1/2X10', Length: 12, Hole: '4 @ 13/16', End: 2, Edge: 2 });
    // One in each corner is a reading: only the first is given.
    expect(gauge?.settings).toHaveLength(1);
    expect(gauge?.notGiven.map(({ index }) => index)).toEqual([2, 3, 4]);
  });

  it('include a leg that is left to choose, and a usual gage', () => {
    const angle = { Section: 'L4X3X1/4', Length: 24, Hole: '2 @ 9/16', End: 2, Pitch: 20 };
    expect(gauges({ ...angle, Gage: 1.5 })[0]?.notGiven).toHaveLength(2);
    expect(gauges({ ...angle, Leg: 4 })[0]?.notGiven).toHaveLength(2);
    expect(gauges({ ...angle, Leg: 4, Gage: 2.5 })[0]?.notGiven).toEqual([]);
  });

  it('are all of them in a row without a length', () => {
    expect(gauges({ Section: 'PL1/2X10', Hole: '13/16', End: 2, Edge: 2 })).toEqual([]);
  });
});

describe('the gauges of an angle', () => {
  const angle = {
    Section: 'L4X4X1/4',
    Length: 40,
    Hole: '2 @ 13/16',
    End: 2,
    Pitch: 36,
    Gage: 2.5,
  };
  const near = shopWith({ 'Left stop greatest reach': 24, 'Right stop greatest reach': 24 });

  it('leave the heel at the fence', () => {
    const found = gauges({ ...angle, Bolt: 'none' }, { turns: 'flip' });
    expect(shown(found)).toEqual(['left 2, 2.5: 1.1 as it lies', 'left 38, 2.5: 1.2 as it lies']);
    expect(found[0]?.settings[0]?.hits[0]?.edge).toBe('heel');
  });

  it('are set from the other end where the stop does not go so far, and the clearance covers the length', () => {
    const far = { press: findPress('Bay A', 'Press', near), shop: near };
    const standard = gauges({ ...angle, Bolt: '3/4' }, far);
    expect(shown(standard)).toEqual(['left 2, 2.5: 1.1 as it lies', 'right 2, 2.5: 1.2 as it lies']);
    expect(standard[0]?.settings[1]?.hits[0]?.end).toBe('right');
    // 1/32 in of clearance do not cover 1/16 in of length.
    const [tight] = gauges({ ...angle, Hole: '2 @ 25/32', Bolt: '3/4' }, far);
    expect(tight?.marked).toEqual([{ group: 0, index: 2 }]);
  });

  it('have the left end on the right for its other leg, since the heel stays at the fence', () => {
    const both = {
      ...{ Section: 'L4X3X1/4', Length: 40, Hole: '9/16', End: 2, Gage: 2.5, Leg: 'long', Bolt: 'none' },
      ...{ 'Hole 2': '9/16', 'End 2': 'left 5', 'Gage 2': 1.75, 'Leg 2': 'short', 'Bolt 2': 'none' },
    };
    const [long, short] = gauges(both);
    expect(shown([long as RowGauge])).toEqual(['left 2, 2.5: 1.1 as it lies']);
    expect(shown([short as RowGauge])).toEqual(['right 5, 1.75: 2.1 as it lies']);
    expect([long, short].map((each) => [each?.leftEnd, each?.settings[0]?.hits[0]?.end])).toEqual([
      ['left', 'left'],
      ['right', 'left'],
    ]);
    // Alone, the short leg lies as it is drawn.
    const alone = {
      Section: 'L4X3X1/4',
      Length: 40,
      Hole: '9/16',
      End: 5,
      Gage: 1.75,
      Leg: 'short',
      Bolt: 'none',
    };
    expect(shown(gauges(alone))).toEqual(['left 5, 1.75: 1.1 as it lies']);
    expect(gauges(both, { groups: [1] })[0]?.leftEnd).toBe('right');
    const near = shopWith({ 'Right stop greatest reach': 4, 'Left stop greatest reach': 36 });
    const [other] = gauges(both, { press: findPress('Bay A', 'Press', near), groups: [1] });
    expect(other?.settings[0]).toMatchObject({ stop: 'left', hits: [{ end: 'right' }] });
  });

  it('go toe first into the throat', () => {
    const shallow = shopWith({ 'Punch throat': 1 });
    const [gauge] = gauges({ ...angle, Bolt: 'none' }, { press: findPress('Bay A', 'Press', shallow) });
    expect(gauge?.marked).toHaveLength(2);
  });
});
