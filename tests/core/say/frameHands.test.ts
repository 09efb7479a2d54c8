import { describe, expect, it } from 'vitest';
import { frameHands } from '../../../src/core/say/frameHands.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { refusalText } from '../../support/refusal.js';
import { bayA, type PressCells, pressTable } from '../../support/sampleShop.js';

const pressesOf = (...each: PressCells[]) => {
  const named = each.map((cells, at): [string, PressCells] => [`Bay ${at + 1}`, { ...bayA, ...cells }]);
  return readShop({ presses: pressTable(Object.fromEntries(named)) }).presses;
};
const lies = (leg: string | null): PressCells => ({ 'Angle shear leg position': leg });

describe('frameHands', () => {
  it('names every press that makes both', () => {
    expect(frameHands(pressesOf(lies('both'), lies('down'), lies('both')))).toBe('Bay 1 or Bay 3');
    expect(frameHands(pressesOf(lies('both'), lies(null)))).toBe('Bay 1');
  });

  it('says what is not known where none is known to make both', () => {
    expect(frameHands(pressesOf(lies('down'), lies(null)))).toBe(
      'not known: Bay 2 has Angle shear leg position blank',
    );
    expect(frameHands(pressesOf(lies('left')))).toBe(
      'not known: Bay 1 has Angle shear leg position unreadable',
    );
  });

  it('refuses where none makes both, with the reason of each', () => {
    const said = refusalText(() =>
      frameHands(pressesOf(lies('down'), lies('up'), { 'Angle shear': 'no' }, lies('up'))),
    );
    expect(said).toBe(
      'Shop: each piece of a frame of angles has a miter of either hand, and no press makes both: Bay 1 miters with the leg down only; Bay 2 miters with the leg up only; Bay 3 has no angle shear; and 1 more. Saw the pieces; give "in" or "mm" in place of the shop cell for their sizes.',
    );
    expect(refusalText(() => frameHands(pressesOf({ 'Angle shear legs mitered': 'no' })))).toContain(
      'Bay 1 cuts angles square only',
    );
    expect(refusalText(() => frameHands([]))).toContain('no press makes both: the shop has none.');
  });
});
