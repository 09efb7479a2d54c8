import { describe, expect, it } from 'vitest';
import { displayFormula, NotWritten, translateFormula } from '../../../src/bench/book/translate.js';
import { rangeOfName } from '../../../src/sheet/formula/rangeOfName.js';
import { storedFormula } from '../../../src/bench/book/storedFormula.js';
import { workbookScope } from '../../../src/sheet/formula/scope.js';

const scope = workbookScope(
  {
    sheets: [{ name: 'Quote' }, { name: "It's" }],
    tables: [
      {
        name: 'Parts',
        sheet: 0,
        zone: { top: 4, left: 0, bottom: 9, right: 2 },
        headerRows: 1,
        totalsRows: 1,
        columns: ['Mark', 'Hole [in]', 'Press'],
      },
    ],
    names: [
      { name: 'Stamp', text: "'It''s'!$B$4", sheet: undefined },
      { name: 'Rate', text: '0.85', sheet: undefined },
      { name: 'Own', text: 'Own+1', sheet: undefined },
    ],
  },
  'TONROW',
  new Set(['ROWCHECK']),
);
const at = (sheet: number, row: number, rows = 0) => ({ sheet, row, column: 5, shift: { rows, columns: 0 } });

describe('a formula in the form of the grid', () => {
  it.each([
    ['_xldudf_TONROW_ROWCHECK(A1)', 'TONROW.ROWCHECK(A1)'],
    ['_xlfn.XLOOKUP(A1,B:B,C:C)', 'XLOOKUP(A1,B:B,C:C)'],
    ['Parts[[#Headers],[Mark]:[Press]]', '$A$5:$C$5'],
    ['Parts[[#This Row],[Mark]:[Press]]', '$A7:$C7'],
    ['Parts[@Mark]', '$A7'],
    ["SUM(Parts[Hole '[in']])", 'SUM($B$6:$B$9)'],
    ['Parts', '$A$6:$C$9'],
    ['Parts[#All]', '$A$5:$C$10'],
    ['Stamp&Rate', 'Stamp&(0.85)'],
    ["'It''s'!A1+Quote!$B$2", "'It’s'!A1+Quote!$B$2"],
    ['"say ""x"""', 'CONCATENATE("say ",CHAR(34),"x",CHAR(34))'],
    ['"C:\\"', 'CONCATENATE("C:",CHAR(92))'],
    ['""', '""'],
    ['SUM(5:7)', 'SUM(5:7)'],
  ])('%s is written %s', (stored, written) => {
    expect(translateFormula(stored, at(0, 6), scope)).toBe(written);
  });

  it('names the sheet of a table that stands elsewhere', () => {
    expect(translateFormula('Parts[Mark]', at(1, 0), scope)).toBe('Quote!$A$6:$A$9');
  });

  it('moves what is relative in a shared formula, and nothing else', () => {
    expect(translateFormula('A1+$B$2+C$3+2:2', at(0, 6, 3), scope)).toBe('A4+$B$2+C$3+5:5');
  });

  it.each([
    'A1#',
    '@A1:A9',
    'Nowhere+1',
    'Lost[Mark]',
    'Parts[Lost]',
    'Own',
    '_xlfn.ANCHORARRAY(A1)',
    '"open',
  ])('has none for %s', (stored) => {
    expect(() => translateFormula(stored, at(0, 6), scope)).toThrow(NotWritten);
  });
});

describe('a formula as people read it', () => {
  it.each([
    [
      '_xldudf_TONROW_ROWCHECK(Parts[[#This Row],[Mark]],Stamp,"a ""b""")',
      'TONROW.ROWCHECK(Parts[[#This Row],[Mark]],Stamp,"a ""b""")',
    ],
    ['_xlfn.CONCAT(A1, B2)', 'CONCAT(A1, B2)'],
  ])('keeps its references and texts: %s', (stored, shown) => {
    expect(displayFormula(stored, at(0, 6), scope)).toBe(shown);
  });

  it('is stored again as it came', () => {
    const stored =
      '_xldudf_TONROW_ROWCHECK(Parts[[#This Row],[Mark]:[Press]],Stamp,"a ""b""")+_xlfn.XLOOKUP(A1,B:B,C:C)';
    expect(storedFormula(`=${displayFormula(stored, at(0, 6), scope)}`, 'TONROW')).toBe(stored);
  });
});

describe('a formula in the form of files', () => {
  it.each([
    ['=Parts[@]', 'Parts[#This Row]'],
    ['=Parts[@Mark]&Parts[@[Mark]:[Press]]', 'Parts[[#This Row],[Mark]]&Parts[[#This Row],[Mark]:[Press]]'],
    ['=tonrow.shop(Presses)', '_xldudf_TONROW_SHOP(Presses)'],
    ['=SORT(A1:A9)+STDEV.S(B:B)', '_xlfn._xlws.SORT(A1:A9)+_xlfn.STDEV.S(B:B)'],
    ['="[@Mark]"', '"[@Mark]"'],
  ])('%s is stored as %s', (shown, stored) => {
    expect(storedFormula(shown, 'TONROW')).toBe(stored);
  });
});

describe('a name that stands for cells', () => {
  it.each([
    ["='It''s'!$B$4", { sheet: "It's", zone: { top: 3, left: 1, bottom: 3, right: 1 } }],
    ['Shop!$A$1:$C$9', { sheet: 'Shop', zone: { top: 0, left: 0, bottom: 8, right: 2 } }],
    ['0.85', undefined],
    ['OFFSET(Shop!$A$1,1,0)', undefined],
    ['Shop!$A$1,Shop!$C$1', undefined],
  ])('%s', (text, range) => {
    expect(rangeOfName(text)).toEqual(range);
  });
});
