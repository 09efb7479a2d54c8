// Rows that name no press: which of the presses they are checked on, and what is said of those that cannot be read.
import { describe, expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { bayA, bayB, type PressCells, pressTable } from '../../support/sampleShop.js';

const clip: Row = {
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Edge: '1-1/2',
  End: '1-1/2',
};
const plain: Row = { Section: 'FB 3/8x4', Grade: 'A36', Length: 12 };
const sawn: Row = { Section: 'HSS4X4X1/4', Grade: 'A36', Length: 240 };

function checked(row: Row, presses: Record<string, PressCells>) {
  return checkedRow({ Qty: 1, ...row }, readShop({ presses: pressTable(presses) }));
}

const badThroat = { ...bayB, 'Punch throat': 'abc' };
const problem = /Presses, Bay B, Punch throat: 'abc' is not a length\. Write /;

describe('a press with a cell that cannot be read, in a row without a press', () => {
  it('is told beside the press that runs the row', () => {
    const { verdict, press, note } = checked(clip, { 'Bay A': bayA, 'Bay B': badThroat });
    expect({ verdict, press }).toEqual({ verdict: 'OK', press: 'Bay A' });
    expect(note).toContain(
      'No press given: Bay A chosen of 1 that can be read. Bay B was not tried: Presses, ',
    );
    expect(note).toMatch(problem);
  });

  it('is told beside a press that runs the row near its limit', () => {
    // 28.716 US tons of 30.
    const presses = { 'Bay A': { ...bayA, 'Punch force': 30 }, 'Bay B': badThroat };
    const { verdict, press } = checked(clip, presses);
    expect({ verdict, press }).toEqual({ verdict: 'Near limit', press: 'Bay A' });
  });

  it.each<[string, PressCells, string]>([
    ['has no station', { Punch: 'no' }, 'No station'],
    ['is too small', { 'Punch largest hole': '1/2' }, 'Too big'],
    ['is not known well enough', { 'Punch stroke': null }, 'Not checked'],
  ])('comes before a press that %s', (_what, cells, word) => {
    const { verdict, press, note } = checked(clip, { 'Bay A': { ...bayA, ...cells }, 'Bay B': badThroat });
    expect({ verdict, press }).toEqual({ verdict: 'Check input', press: 'Bay B' });
    expect(note).toMatch(problem);
    expect(note).toContain(
      `none is sure to run it: Bay B has a cell that cannot be read; of the others Bay A comes nearest: ${word}.`,
    );
  });

  it('is tried as any other in rows that do not need the cell', () => {
    const { verdict, note } = checked(plain, { 'Bay A': bayA, 'Bay B': badThroat });
    expect(verdict).toBe('OK');
    expect(note).toContain('chosen of 2.');
    expect(note).not.toContain('abc');
  });

  it('is not told where the row names the other press', () => {
    const { verdict, note } = checked({ ...clip, Press: 'Bay A' }, { 'Bay A': bayA, 'Bay B': badThroat });
    expect(verdict).toBe('OK');
    expect(note).not.toContain('Bay B');
  });

  it('is one of several: each is told, and the one that is the better otherwise stands for the row', () => {
    const noPunch = { ...badThroat, 'Flat shear': 'no' };
    const { verdict, press, note } = checked(clip, { 'Bay C': noPunch, 'Bay B': badThroat });
    expect({ verdict, press }).toEqual({ verdict: 'Check input', press: 'Bay B' });
    expect(note).toContain('Bay C was not tried: Presses, Bay C, Punch throat');
    expect(note).not.toContain('of the others');
  });

  it('is two presses of one name', () => {
    const table = pressTable({ 'Bay A': bayA, 'Bay B': bayB, 'bay b': bayB });
    const { verdict, press, note } = checkedRow(clip, readShop({ presses: table }));
    expect({ verdict, press }).toEqual({ verdict: 'OK', press: 'Bay A' });
    expect(note).toContain('Bay B was not tried: Presses: 2 presses are called Bay B.');
  });
});

describe('a row without a press whose presses can all be read', () => {
  it('says how many were tried, or which comes nearest', () => {
    expect(checked(clip, { 'Bay A': bayA, 'Bay B': bayB }).note).toContain('Bay A chosen of 2.');
    const small = { ...bayB, 'Punch largest hole': '1/2' };
    const { verdict, note } = checked(clip, { 'Bay B': small, 'Bay C': { ...small, Punch: 'no' } });
    expect(verdict).toBe('Too big');
    expect(note).toContain('No press given, and none is sure to run it: Bay B comes nearest.');
  });
});

describe('the press that comes nearest where none runs the row', () => {
  const angle: Row = { Section: 'L3x3x1/4', Grade: 'A36', Length: 24, 'Notch width': 1, 'Notch depth': 1 };
  const nearest = (row: Row, presses: Record<string, PressCells>) => checked(row, presses).press;
  /** Either order of the presses: the first has no advantage. */
  const always = (row: Row, presses: Record<string, PressCells>) => [
    nearest(row, presses),
    nearest(row, Object.fromEntries(Object.entries(presses).reverse())),
  ];

  it('is the one that has more of the stations, not the one whose word is less bad', () => {
    const presses = {
      'Bay A': { ...bayA, 'Angle shear': 'no', Notcher: 'no' },
      'Bay B': { ...bayB, Notcher: 'no' },
    };
    expect(always(angle, presses)).toEqual(['Bay B', 'Bay B']);
    // Bay C has the notcher alone, Bay A both stations, too small: Too big goes before No station only as a word.
    const small = { ...bayA, 'Notcher thickness': '3/16', 'Angle shear thickness square': '3/16' };
    expect(always(angle, { 'Bay A': small, 'Bay C': { ...bayB, 'Angle shear': 'no' } })).toEqual([
      'Bay A',
      'Bay A',
    ]);
  });

  it('is not one whose stations are unknown where it fails as well', () => {
    // 15 in from either edge is over both throats; only of Bay B is it known that it can cut the plate.
    const wide: Row = { ...clip, Section: 'PL3/8X30', Edge: 15 };
    const unknown = { ...bayA, 'Flat shear': null, 'Punch throat': 7 };
    const presses = {
      'Long press': unknown,
      'Bay B': { ...bayB, 'Punch throat': 12, 'Flat shear widest bar': 36 },
    };
    expect(always(wide, presses)).toEqual(['Bay B', 'Bay B']);
  });

  it('is among presses with the same stations and word the one of which more is known', () => {
    const thick: Row = { ...plain, Section: 'FB 1x4' };
    const known = { ...bayA, 'Longest bar': 480 };
    expect(always(thick, { 'Bay A': { ...known, 'Longest bar': null }, 'Bay B': known })).toEqual([
      'Bay B',
      'Bay B',
    ]);
  });

  it('is one that may run it before one that fails: what is not known is no failure', () => {
    const presses = {
      'Bay A': { ...bayA, Notcher: null },
      'Bay B': { ...bayB, 'Notcher thickness': '3/16' },
    };
    const { verdict, press } = checked(angle, presses);
    expect({ verdict, press }).toEqual({ verdict: 'Not checked', press: 'Bay A' });
  });
});

describe('a station that no press has', () => {
  const notched: Row = { ...plain, Section: 'PL1/4X4', 'Notch width': 1, 'Notch depth': 1 };
  const none = { 'Bay A': { ...bayA, Notcher: 'no' }, 'Bay B': { ...bayB, Notcher: 'no' } };

  it('is told of all presses, and none is said to come nearest', () => {
    const { verdict, governs, note } = checked(notched, none);
    expect({ verdict, governs }).toEqual({ verdict: 'No station', governs: 'notcher' });
    expect(note).toMatch(/^No press has a notcher\. Understood as: /);
    expect(note).not.toMatch(/Bay|nearest/);
    const angles = { 'Bay A': { ...bayA, 'Angle shear': 'no' }, 'Bay B': { ...bayB, 'Angle shear': 'no' } };
    expect(checked({ ...plain, Section: 'L3x3x1/4' }, angles).note).toMatch(/^No press has an angle shear\./);
  });

  it('leaves the nearest named where something else is found on it', () => {
    const { note } = checked({ ...notched, Section: 'PL1X4' }, none);
    expect(note).toMatch(/^No press has a notcher\. 1 in thick is over Bay [AB]'s rated size/);
    expect(note).toMatch(/Bay [AB] comes nearest\./);
  });

  it('is told of the press that is named where another has it, or may have it, or the row names one', () => {
    const bayC = { ...bayB, 'Flat shear': 'no' };
    expect(checked(notched, { ...none, 'Bay C': bayC }).note).toMatch(/^Bay [ABC] has no /);
    expect(checked({ ...notched, Press: 'Bay B' }, none).note).toMatch(/^Bay B has no notcher\./);
    const maybe = checked(notched, { ...none, 'Bay C': { ...bayB, Notcher: null } });
    expect(maybe).toMatchObject({ verdict: 'Not checked', press: 'Bay C' });
  });
});

describe('a section that is sawn', () => {
  it('needs no press where nothing else is made in it', () => {
    for (const presses of [{}, { 'Bay A': bayA, 'Bay B': badThroat }, { 'Bay A': { 'Longest bar': 120 } }]) {
      const { verdict, press, note } = checked(sawn, presses);
      expect({ verdict, press }).toEqual({ verdict: 'Off press', press: undefined });
      expect(note).toContain('cut by saw');
      expect(note).not.toMatch(/No press given|chosen|The shop has no press/);
    }
  });

  it('still needs one for punched holes', () => {
    const channel = { ...clip, Section: 'C8X11.5', Edge: null, End: null };
    expect(checked(channel, {}).verdict).toBe('No press');
    expect(checked(channel, { 'Bay A': bayA }).note).toContain('No press given');
  });

  it('is held to the supports of a press that the row names only where it is worked on it', () => {
    const presses = { 'Bay A': { ...bayA, 'Longest bar': 120 } };
    expect(checked({ ...sawn, Press: 'Bay A' }, presses)).toMatchObject({
      verdict: 'Off press',
      press: 'Bay A',
    });
    const channel = {
      Section: 'C8X11.5',
      Grade: 'A36',
      Length: 240,
      Hole: '13/16',
      Leg: 'web',
      Edge: 4,
      End: 2,
    };
    expect(checked({ ...channel, Press: 'Bay A' }, presses).verdict).toBe('Too big');
  });
});
