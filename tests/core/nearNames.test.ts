import { describe, expect, it } from 'vitest';
import { nearNames } from '../../src/core/nearNames.js';

const names = ['A572-50', 'A588', 'A992', 'Mild', 'S355'];

describe('nearNames', () => {
  it('puts a name that begins with what was typed first', () => {
    expect(nearNames('A572', names)[0]).toBe('A572-50');
  });

  it('gives at most three names', () => {
    expect(nearNames('A5', ['A51', 'A52', 'A53', 'A54'])).toHaveLength(3);
  });

  it('leaves out names that are not near: more than two fifths of the longer text to edit', () => {
    expect(nearNames('wild', names)).toEqual(['Mild']);
    expect(nearNames('wilt', names, (name) => name.toLowerCase())).toEqual([]);
    expect(nearNames('Weldox', names, (name) => name.toLowerCase())).toEqual([]);
  });

  it('takes more edits, two thirds, in names that begin alike or hold what was typed', () => {
    expect(nearNames('ab', ['abcde'])).toEqual(['abcde']);
    expect(nearNames('bc', ['abcde'])).toEqual(['abcde']);
    expect(nearNames('bc', ['abcdefg'])).toEqual([]);
    expect(nearNames('A63', ['A36'])).toEqual(['A36']);
    expect(nearNames('', names)).toEqual([]);
  });

  it('compares by a key where one is given', () => {
    expect(nearNames('s355', names, (name) => name.toLowerCase())[0]).toBe('S355');
  });
});
