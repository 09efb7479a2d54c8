import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveFormula } from '../../../src/sheet/formula/moveFormula.js';
import { readPieces } from '../../../src/sheet/formula/pieces.js';

const kinds = (formula: string) => readPieces(formula).map(({ kind, text }) => `${kind} ${text}`);

/** What formulas are made of, whole and broken. */
const bits = fc.constantFrom(
  ...['A1', '$B$2', 'C:D', '3:$5', "'It''s'!A1", 'Shop!B2:C3', '[1]Rates!A1', 'Shop!#REF!', 'TRUE', 'rate'],
  ...[
    'Parts[[#This Row],[A]]',
    '[@Mark]',
    "Parts[Hole '[in']]",
    'SUM(',
    ')',
    '+',
    ',',
    ' ',
    '\n',
    '"A1"',
    '1E3',
  ],
  ...['"', "'", '[', ']', '#', '{1;2}', '€', '!', '1.5', '#N/A', ':'],
);

describe('a formula in pieces', () => {
  it('is the formula again, whatever is written', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(bits).map((all) => all.join('')),
          fc.string(),
        ),
        (formula) => {
          expect(
            readPieces(formula)
              .map(({ text }) => text)
              .join(''),
          ).toBe(formula);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('moved down and right is the formula again when it is moved back', () => {
    fc.assert(
      fc.property(fc.array(bits), fc.nat(99), fc.nat(99), (all, down, right) => {
        const formula = all.join('');
        expect(moveFormula(moveFormula(formula, down, right), -down, -right)).toBe(formula);
      }),
    );
  });

  it('names cells, tables, names, functions and texts apart', () => {
    expect(kinds(`=SUM('It''s'!A1:$B2,Parts[@Mark],[Qty])&rate&"A1"`)).toEqual([
      'other =',
      'call SUM',
      'other (',
      "cells 'It''s'!A1:$B2",
      'other ,',
      'table Parts[@Mark]',
      'other ,',
      'table [Qty]',
      'other )',
      'other &',
      'name rate',
      'other &',
      'text "A1"',
    ]);
  });

  it('reads the name of a sheet without its quotes', () => {
    expect(readPieces("'It''s'!$A$1")).toMatchObject([{ kind: 'cells', sheet: "It's", first: '$A$1' }]);
    expect(readPieces('Shop!#REF!')).toMatchObject([{ kind: 'name', sheet: 'Shop', name: '#REF!' }]);
  });
});
