import { describe, expect, it } from 'vitest';
import { shearHands } from '../../../src/core/press/shearHands.js';
import { findPress } from '../../../src/core/shop/findPress.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const position = 'Angle shear leg position';
const handsOf = (cells: PressCells) => shearHands(findPress('Bay A', 'Press', shopWith(cells)));

describe('shearHands', () => {
  it.each([
    ['both ways', { [position]: 'both' }, { makes: 'both' }],
    ['down only', { [position]: 'down' }, { makes: 'one', leg: 'down' }],
    ['up only', { [position]: 'UP' }, { makes: 'one', leg: 'up' }],
    ['no angle shear', { [position]: 'both', 'Angle shear': 'no' }, { makes: 'none', why: 'no station' }],
    [
      'square only',
      { [position]: 'both', 'Angle shear legs mitered': 'no' },
      { makes: 'none', why: 'square only' },
    ],
    [
      'position blank',
      { [position]: null },
      { makes: 'unknown', item: 'angleShearLegPosition', cell: 'blank' },
    ],
    [
      'position unreadable',
      { [position]: 'left' },
      { makes: 'unknown', item: 'angleShearLegPosition', cell: 'unreadable' },
    ],
    ['station blank', { 'Angle shear': null }, { makes: 'unknown', item: 'angleShear', cell: 'blank' }],
    [
      'station unreadable',
      { 'Angle shear': 'maybe' },
      { makes: 'unknown', item: 'angleShear', cell: 'unreadable' },
    ],
    [
      'legs blank',
      { 'Angle shear legs mitered': null },
      { makes: 'unknown', item: 'angleShearLegsMitered', cell: 'blank' },
    ],
  ] as const)('%s', (_, cells, hands) => {
    expect(handsOf(cells)).toEqual(hands);
  });
});
