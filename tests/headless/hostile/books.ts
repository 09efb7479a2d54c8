import {
  buildWorkbook,
  formula,
  workbookParts,
  zipParts,
  type BuiltSheet,
} from '../../xlsx/support/buildWorkbook.js';

/*
 * Small files that ask for work without end, by class. Each has good formulas beside the bad ones.
 */

export interface HostileBook {
  bytes(): Uint8Array;
  /** Whether the file is refused, or only the bad cells keep their values. */
  comes: 'refused' | 'done';
}

/** Comes out as 42 where the rest of the file is calculated. */
const good = formula('_xldudf_TONROW_DOUBLE(21)', 0);

/** A sheet with the good formula in A1, and others in column B. */
const sheetOf = (formulas: readonly string[]): BuiltSheet => ({
  name: 'Quote',
  rows: formulas.map((text, at) => [at === 0 ? good : undefined, formula(text)]),
});

const formulas = (...texts: string[]) => buildWorkbook([sheetOf(texts)]);
const named = (names: Record<string, string>, ...texts: string[]) =>
  buildWorkbook([sheetOf(texts)], { names });
const letters = 'a'.repeat(32_767);
const times = <T>(count: number, make: (at: number) => T): T[] =>
  Array.from({ length: count }, (_, at) => make(at));

/** A text of 10 MB that packs no better than writing does. */
const varied = times(2_000_000, (at) => ((at * 7_919_017) % 60_466_176).toString(36).padStart(5, '0')).join(
  '',
);

/** A name that is made of the next three times, and so on. */
const chainOfNames = (count: number): Record<string, string> =>
  Object.fromEntries(
    times(count, (at) => [`n_${at}`, at === count - 1 ? '1' : times(3, () => `n_${at + 1}`).join('+')]),
  );

function manyNames(count: number): Uint8Array {
  const parts = workbookParts([sheetOf(times(200, () => 'aa+1'))]);
  const names = `<definedNames>${'<definedName name="aa">1</definedName>'.repeat(count)}</definedNames>`;
  parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string).replace(
    '</workbook>',
    `${names}</workbook>`,
  );
  return zipParts(parts);
}

function chartSheets(count: number): Uint8Array {
  const parts = workbookParts([sheetOf(['Nowhere!A1', '1+1'])]);
  const sheets = times(count, (at) => `<sheet name="C${at}" sheetId="${at + 9}" r:id="c${at}"/>`).join('');
  const links = times(count, (at) => `<Relationship Id="c${at}" Type="x/chartsheet" Target="c.xml"/>`).join(
    '',
  );
  parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string).replace('</sheets>', `${sheets}</sheets>`);
  const rels = 'xl/_rels/workbook.xml.rels';
  parts[rels] = (parts[rels] as string).replace('</Relationships>', `${links}</Relationships>`);
  return zipParts(parts);
}

function manyCells(count: number): Uint8Array {
  const rows = times(
    Math.ceil(count / 500),
    (row) =>
      `<row r="${row + 1}">${times(500, (at) => ((row * at) % 7 === 0 ? '<c />' : '<c/>')).join('')}</row>`,
  );
  return buildWorkbook([{ name: 'Quote', sheetData: rows.join('') }]);
}

function shared(text: string, cells: number): Uint8Array {
  const first = `<row r="1"><c r="A1"><f t="shared" ref="A1:A${cells}" si="0">${text}</f></c></row>`;
  const rest = times(
    cells - 1,
    (at) => `<row r="${at + 2}"><c r="A${at + 2}"><f t="shared" si="0"/></c></row>`,
  );
  return buildWorkbook([{ name: 'Quote', sheetData: first + rest.join('') }]);
}

const table = (counts: string) => {
  const parts = workbookParts([
    {
      ...sheetOf(['SUM(T[Qty])', 'T[[#Headers],[Qty]]']),
      tables: [{ name: 'T', ref: 'D1:E4', columns: ['Mark', 'Qty'] }],
    },
  ]);
  parts['xl/tables/table1.xml'] = (parts['xl/tables/table1.xml'] as string).replace(
    'displayName',
    `${counts} displayName`,
  );
  return zipParts(parts);
};

const withTable = (text: string) =>
  buildWorkbook([{ ...sheetOf([text]), tables: [{ name: 'T', ref: 'D1:E4', columns: ['Mark', 'Qty'] }] }]);

const text = (cell: string) => ({ attributes: ' t="str"', inner: `<v>${cell}</v>` });

const overTexts = (...texts: string[]) =>
  buildWorkbook([
    {
      name: 'Quote',
      rows: [...times(20, () => [text(letters)]), ...texts.map((one) => [good, formula(one)])],
    },
  ]);

const numbers = (rows: number, ...texts: string[]) =>
  buildWorkbook([
    {
      name: 'Quote',
      rows: times(rows, (at) => [
        at % 97,
        ...(texts[at] === undefined ? [] : [formula(texts[at] as string)]),
      ]),
    },
  ]);

export const hostileBooks: Record<string, HostileBook> = Object.fromEntries(
  Object.entries({
    'a name made of itself': () => named({ aa: 'aa+aa+aa' }, 'aa', '1+1'),
    'names that multiply': () => named(chainOfNames(19), ...times(50, () => 'n_0'), '1+1'),
    'a long name used often': () =>
      named({ aa: times(4_000, () => '1').join('+') }, ...times(5_000, () => 'aa')),
    '100,000 names of one name': () => manyNames(100_000),
    '9,000 chart sheets': () => chartSheets(9_000),
    'days without end': () =>
      formulas(
        'WORKDAY(1,1E9)',
        'NETWORKDAYS(1,1E9)',
        'WEEKNUM(1E300)',
        'EDATE(1,1E300)',
        'WORKDAY({1,2},{1E9,1E12})',
        'WORKDAY(1E9,-1E9)',
        'WORKDAY("1","1E9")',
        'YEAR(1E300)',
        'EOMONTH(1E9,1)',
        'DATE(1E300,1,1)',
        'DATE(1E9,1E9,1E9)',
        'DATEDIF(1,1E300,"d")',
      ),
    'days to the end of the calendar, often': () =>
      formulas(...times(2_000, (at) => `WORKDAY(${at},2900000)`)),
    'numbers beyond measure': () =>
      formulas(
        'REPT("a",1E300)',
        'FACT(1E300)',
        'ROUND(1,1E300)',
        'ADDRESS(1E300,1E300)',
        'LARGE({1,2},1E300)',
        'CHAR(1E300)',
        'MROUND(1E300,1E-300)',
        'NPER(1E-300,1,1)',
        'RATE(1E9,1,1)',
        'TEXT(1E300,"0")',
        'MID("a",1E300,1E300)',
        'FLOOR(1E300,1E-300)',
        'CEILING(1E300,1E-300)',
        'PMT(1E300,1E300,1)',
      ),
    'patterns that try everything': () =>
      overTexts(
        'COUNTIF(A1:A20,"*a*a*b")',
        'COUNTIF(A1:A20,"*a*b")',
        'MATCH("*a*a*b",A1:A20,0)',
        'COUNTIF(A1:A20,{"*a*a*a*a*b","*a*b"})',
        'SUM(COUNTIF(A1:A20,{"*a*a*b";"x"}))',
        'VLOOKUP("*a*a*b",A1:A20,1,FALSE)',
        'SUMIFS(A1:A20,A1:A20,"=*a*a*b")',
        'XLOOKUP("*a*a*b",A1:A20,A1:A20,"",2)',
        'COUNTIF(A1:A20,"?*a?*a?*b")',
      ),
    'texts that grow': () =>
      overTexts(
        'SUBSTITUTE(A1,"a",A2)',
        'SUBSTITUTE(A1:A20,"a",A2)',
        'TEXTJOIN(A1,TRUE,A1:A20,A1:A20)',
        'CONCAT(A1:A20)',
        'A1&A2',
        'REPT(A1,1000)',
        'PROPER(A1)',
        'TRIM(A1)',
        'REPLACE(A1,1,1,A2)',
      ),
    'signs without end': () =>
      formulas(
        ...['@', '-', '+', '{', '('].map((sign) => `${sign.repeat(8_191)}1`),
        `1${'%'.repeat(8_191)}`,
        `${'SUM('.repeat(4_000)}1`,
        `A1${'#'.repeat(8_000)}`,
        `A1${':A1'.repeat(2_700)}`,
        `A1${' A1'.repeat(2_700)}`,
        `${'IF(1,'.repeat(2_000)}1`,
      ),
    'sums without end': () =>
      formulas(
        times(20_001, () => '1').join('+'),
        times(4_000, () => '1').join('+'),
        times(4_000, () => '"a"').join('&'),
        times(20_000, () => '1').join('='),
      ),
    'a text of 10 MB': () => formulas(`"${varied}"`, '1+1'),
    '300,000 arguments': () =>
      formulas(
        `SUM(${times(300_000, () => '1').join(',')})`,
        `_xldudf_TONROW_DOUBLE(${times(4_000, () => '1').join(',')})`,
        `SUM(${times(4_000, () => 'A1').join(',')})`,
        `CHOOSE(1,${times(10_000, () => '1').join(',')})`,
      ),
    'a reference with 200,000 parts': () => withTable(`T[${times(200_000, () => '[#Data]').join(',')}]`),
    'a reference with 2,000 parts': () => withTable(`T[${times(2_000, () => '[#Data]').join(',')}]`),
    'brackets without end': () => withTable(`T${'['.repeat(8_000)}`),
    'headings beyond measure': () => table('headerRowCount="1000000000"'),
    'headings below nothing': () => table('headerRowCount="-5"'),
    'totals that are no number': () => table('totalsRowCount="x"'),
    'shared formulas of 30,000 characters': () => shared(times(4_000, () => 'B1').join('+'), 4_000),
    'arrays times arrays': () =>
      numbers(
        3_000,
        'SUM(COUNTIF(A1:A3000,A1:A3000))',
        'SUM(A1:A3000*TRANSPOSE(A1:A3000))',
        'SUMPRODUCT(COUNTIF(A1:A1000000,A1:A3000))',
        'SUM((ROW(A1:A1000000)=1)*1)',
        'SUM(A1:XFD1048576)',
        'SUM(B:B)',
      ),
    'large ranges, often': () => formulas(...times(300, (at) => `SUM(C1:D${1_000_000 + at})`)),
  }).map(([name, bytes]) => [name, { bytes, comes: 'done' as const }]),
);

const overlapping = (count: number, ref: string): Uint8Array =>
  buildWorkbook([
    { name: 'Quote', rows: times(count, () => [{ inner: `<f t="array" ref="${ref}">1+1</f>` }]) },
  ]);

Object.assign(hostileBooks, {
  'arrays of a million cells over each other': {
    bytes: () => overlapping(200, 'A1:CV10000'),
    comes: 'refused',
  },
  'arrays of 1,000 cells over each other': { bytes: () => overlapping(10_000, 'A1:A1000'), comes: 'refused' },
  '100,000 chart sheets': { bytes: () => chartSheets(100_000), comes: 'refused' },
  'more than 8 million cells': { bytes: () => manyCells(8_100_000), comes: 'refused' },
  'cells that refer to each other in hordes': {
    bytes: () => numbers(600, ...times(600, () => times(1_500, (at) => `A${at + 1}:X${at + 1}`).join('+'))),
    comes: 'done',
  },
} satisfies Record<string, HostileBook>);
