import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FormulaForms, type PlacedFormula } from '../../../src/sheet/formula/forms.js';
import { type Away, cellSeen, zoneSeen } from '../../../src/sheet/formula/moves.js';
import type { Formula, Node } from '../../../src/sheet/formula/nodes.js';
import { moveFormula } from '../../../src/sheet/formula/moveFormula.js';
import { parseFormula } from '../../../src/sheet/formula/parse.js';
import { workbookScope } from '../../../src/sheet/formula/scope.js';

const scopeOf = () =>
  workbookScope(
    {
      sheets: [{ name: 'Quote' }, { name: 'Parts list' }],
      tables: [
        {
          ...{ name: 'Parts', sheet: 0, headerRows: 1, totalsRows: 1, columns: ['Mark', 'Qty'] },
          zone: { top: 3, bottom: 14, left: 0, right: 1 },
        },
      ],
      names: [
        { name: 'Rate', sheet: undefined, text: 'Quote!$B$1' },
        { name: 'Above', sheet: undefined, text: 'Quote!A1' },
        { name: 'Mine', sheet: undefined, text: 'Parts[[#This Row],[Qty]]' },
      ],
    },
    'TONROW',
    new Set(['PUNCHFORCE']),
  );

/** A formula as its cell sees it, without what says how it would move. */
function seen({ node, references, spills, functions, ours, unsupported, dynamic }: Formula, away: Away) {
  const still = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(still);
    if (typeof part !== 'object' || part === null) return part;
    const one = part as Node;
    if (one.kind === 'reference') return { kind: one.kind, sheet: one.sheet, zone: zoneSeen(one, away) };
    if (one.kind === 'spill') return { kind: one.kind, sheet: one.sheet, ...cellSeen(one, away) };
    return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, still(value)]));
  };
  return {
    node: still(node),
    references: references.map((one) => ({ sheet: one.sheet, zone: zoneSeen(one, away) })),
    spills: spills.map((one) => ({ sheet: one.sheet, ...cellSeen(one, away) })),
    functions: [...functions].sort(),
    ...{ ours, unsupported, dynamic },
  };
}

const whole = ({ form, away }: PlacedFormula) => seen(form.formula, away);
const unmoved = { down: 0, right: 0 };

/** Texts of the kinds that formulas have, for a row counted from 1. */
const texts: ((row: number, other: number) => string)[] = [
  (row) => `A${row}*B${row}`,
  (row) => `SUM(A$1:A${row})`,
  (row) => `SUM(A${row}:A$9)`,
  (row) => `IF(A${row}>$B$2,"A${row}",'Parts list'!C${row + 1})`,
  (row, other) => `A${row}+A${other}`,
  () => 'Parts[[#This Row],[Qty]]*Rate',
  () => 'SUM(Parts[Qty])+Parts[[#Headers],[Qty]]',
  () => '[Qty]*2',
  () => 'SUM(Parts[[#This Row],[#Totals],[Qty]])',
  () => 'Mine+Above',
  (row) => `TONROW.PUNCHFORCE(A${row},"13/16","A36")`,
  (row) => `_xldudf_TONROW_PUNCHFORCE(A${row},B$${row},$C${row})`,
  (row) => `SUM(${row}:${row + 2})+SUM(B:C)`,
  (row) => `A${row}#+Quote:'Parts list'!B${row}`,
  (row) => `A${row} :B${row}`,
  (row) => `A0${row}+LOG10(B${row})`,
  (row) => `INDEX(A${row}:B${row},1):C${row}`,
  (row) => `A${row}+`,
  (row) => `Unknown${row}+OFFSET(A${row},1,1)`,
  (row) => `[1]Sheet1!A${row}`,
  (row) => `A${1_048_570 + (row % 12)}`,
];

const cells = fc.array(
  fc.record({
    text: fc.constantFrom(...texts),
    row: fc.nat(20),
    column: fc.constantFrom(0, 1, 5),
    other: fc.integer({ min: 1, max: 3 }),
    sheet: fc.nat(1),
    /** A formula stored with that of another cell. */
    shift: fc.constantFrom(0, 0, 0, 1, 2, -3),
    across: fc.constantFrom(0, 0, 1),
  }),
  { maxLength: 60 },
);

describe('formulas read once for each form', () => {
  it('are what each cell would be read into by itself', () => {
    fc.assert(
      fc.property(cells, (list) => {
        const scope = scopeOf();
        const forms = new FormulaForms(scope);
        for (const { text, row, column, other, sheet, shift, across } of list) {
          const base = row - shift < 0 ? row : row - shift;
          const written = text(base + 1, other);
          const place = { sheet, row, column: column + across, shift: { rows: row - base, columns: across } };
          const alone = seen(parseFormula(written, place, scopeOf()), unmoved);
          const read = forms.read(written, place);
          expect(whole(read), `${written} in row ${row + 1}`).toEqual(alone);
          const { form } = read;
          // Zeros before a number go when a formula is moved.
          const moved = moveFormula(form.text, base - form.row, column - form.column).replace('A0', 'A');
          expect(moved).toBe(written.replace('A0', 'A'));
        }
      }),
      { numRuns: 500 },
    );
  });

  it('are read once for a column, however many rows it has', () => {
    const forms = new FormulaForms(scopeOf());
    for (let row = 20; row < 5000; row++) {
      const place = { sheet: 0, row, column: 3, shift: { rows: 0, columns: 0 } };
      forms.read(`SUM(A$1:A${row + 1})`, place);
      forms.read(`B${row}*Parts[[#Totals],[Qty]]`, { ...place, column: 4 });
    }
    expect(forms.parses).toBe(2);
  });

  it('are read once where a column says the same everywhere, in words that hang on no row', () => {
    const forms = new FormulaForms(scopeOf());
    const scope = scopeOf();
    for (let row = 20; row < 500; row++) {
      const place = { sheet: 0, row, column: 3, shift: { rows: 0, columns: 0 } };
      for (const text of [
        'SUM(A1:B9)+C4',
        'Parts[[#This Row],[Qty]]+A1',
        'Above+A1',
        'Mine+A1',
        '[@Qty]+A1',
        'A1:A400 B30:A2',
      ])
        expect(whole(forms.read(text, place))).toEqual(seen(parseFormula(text, place, scope), unmoved));
    }
    const same = new FormulaForms(scope);
    for (let row = 20; row < 5000; row++)
      same.read('SUM(A1:B9)+C4', { sheet: 0, row, column: 3, shift: { rows: 0, columns: 0 } });
    expect(same.parses).toBe(1);
  });
});
