// Slips of the keyboard: each is read as what was meant, refused, or is itself a text that means something else. The
// last kind no reader can know; every class of it stands here with its reason, and notes echo what was read.
// MUTATIONS=100000 npx vitest run tests/core/notation/mutations.test.ts makes as many as wanted and prints the classes.
import { describe, expect, it } from 'vitest';
import { refused } from '../../../src/core/notation/notation.js';
import { type Slip, slips } from './mutations.js';

const wanted = Number(process.env['MUTATIONS'] ?? 6000);
const isPrinted = process.env['MUTATIONS'] !== undefined;

/** Why a slip of one kind can be a text of its own. `any`: of every kind of text. */
const reasons: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  any: {
    digit: 'another number of the same form',
    '.': 'a decimal point in another place',
    ',': 'a decimal comma in another place',
  },
  angle: { '½': 'a whole number of degrees' },
  grade: {
    letter: 'a grade whose name is shorter by a letter: 304L and 304, S355MC and S355M',
    space: 'a strength that is typed is named as it was typed',
  },
  hole: {
    '-': '1-3/16 and 13/16 are both holes',
    space: '1 3/16 and 13/16 are both holes',
    '@': 'a count of other holes',
    letter: 'a mark of the diameter or an x between other numbers: 2Ø2, 121x8',
  },
  length: {
    "'": "2' and 2'' and 2, 2'6 and 26 and 26' are all lengths",
    '-': '1-3/16 and 13/16, 1-0 3/8 and 10 3/8 are all lengths',
    space: '1 3/16 and 13/16 are both lengths',
    '/': '3/8" and 38" are both lengths',
    letter: 'mm, m and no unit are all lengths',
    '½': 'a whole number of inches',
  },
  section: {
    "'": 'a plate may be given in feet',
    '/': 'a bar of 12 as well as of 1/2',
    letter: 'the word of another section: FL and L, XS and XXS',
  },
  bolt: {},
  count: {},
  force: {},
};

function reasonOf({ kind, what }: Slip): string | undefined {
  const character = what.slice(0, what.lastIndexOf(' '));
  return reasons[kind]?.[character] ?? reasons['any']?.[character];
}

describe(`${wanted} slips of the keyboard`, () => {
  const all = [...slips(wanted, 20_261)];
  const others = all.filter(({ reading, meant }) => reading !== refused && reading !== meant);

  it('are read as meant, refused, or a text of their own for a known reason', () => {
    const unexplained = others.filter((slip) => reasonOf(slip) === undefined);
    expect(unexplained.map(({ text, typed, unit, reading }) => ({ text, typed, unit, reading }))).toEqual([]);
  });

  it('are mostly refused, and seldom a text of their own where no digit slipped', () => {
    const noDigit = others.filter(({ what }) => !what.startsWith('digit'));
    expect(all.filter(({ reading }) => reading === refused).length).toBeGreaterThan(0.75 * wanted);
    expect(others.length).toBeLessThan(0.09 * wanted);
    expect(noDigit.length).toBeLessThan(0.016 * wanted);
  });

  it.runIf(isPrinted)('by class', () => {
    const classes = new Map<string, Slip[]>();
    for (const slip of others) {
      const name = `${slip.kind}, ${slip.what}`;
      classes.set(name, [...(classes.get(name) ?? []), slip]);
    }
    const lines = [...classes].sort().map(([name, [first, ...more]]) => {
      const example = `'${first?.text}' typed '${first?.typed}' in ${first?.unit} is ${first?.reading}`;
      return `${name}: ${more.length + 1}, such as ${example}`;
    });
    console.log([`${wanted - others.length} of ${wanted} as meant or refused`, ...lines].join('\n'));
    expect(classes.size).toBeGreaterThan(0);
  });
});
