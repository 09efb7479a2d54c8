import { describe, expect, it } from 'vitest';
import { notationKinds } from '../../../src/core/notation/notation.js';
import { readingOf } from './readingOf.js';
import { refused } from '../../../src/core/notation/notation.js';
import { looksLikeSize } from '../../../src/core/notation/looksLikeSize.js';
import { headingNames } from '../../../src/core/row/headings/readHeadings.js';
import { readOrRefused } from './mutations.js';

const longest = 32_767;
const allowedMs = 100;
const pieces = [
  ...[
    '1',
    ' ',
    '-',
    '/',
    '1/',
    '1-',
    "1'",
    '1,',
    '.',
    'x',
    '1x',
    '(',
    '()',
    'Ø',
    'd1',
    'pl ',
    'l',
    'xs ',
    '½',
    '\u200B',
  ],
  ...[
    '4 holes ',
    'typ ',
    'sch ',
    'm20x',
    '1 000 ',
    ' 000',
    'a325 ',
    'din ',
    '"',
    "''",
    '¹⁄₂',
    'é',
    '\u00A0',
    '#',
    '@',
  ],
];

/** Processor time, so that what else the machine does makes no difference. */
function fastest(run: () => unknown): number {
  const times = Array.from({ length: 3 }, () => {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

describe('a text as long as a cell can be', () => {
  it.each(pieces)('made of %j is refused by every reader in an instant', (piece) => {
    const text = `1${piece.repeat(longest)}`.slice(0, longest - 1);
    for (const kind of notationKinds)
      for (const typed of [`${text}1`, text]) {
        // Spaces behind a number are no part of it.
        expect([refused, '1', '1°']).toContain(readOrRefused(kind, typed, 'in'));
        expect(
          fastest(() => readOrRefused(kind, typed, 'mm')),
          kind,
        ).toBeLessThan(allowedMs);
      }
    expect(fastest(() => looksLikeSize(text, 'in'))).toBeLessThan(allowedMs);
    expect(fastest(() => headingNames([text]))).toBeLessThan(allowedMs);
  });

  it.each(pieces)('as long as is read, made of %j, is no slower', (piece) => {
    for (const length of [30, 40, 60, 199]) {
      const text = `1${piece.repeat(length)}`.slice(0, length);
      for (const kind of notationKinds)
        expect(
          fastest(() => readOrRefused(kind, `${text} `, 'in')),
          `${kind} ${length}`,
        ).toBeLessThan(allowedMs);
    }
  });

  it('the readers still read', () => {
    expect(readingOf('hole', '13/16', 'in')).toBe('Ø13/16 in');
  });
});
