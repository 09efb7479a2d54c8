import { beforeAll, describe, expect, it } from 'vitest';
import { verdicts } from '../../src/core/check/verdict.js';
import { readSheetValues } from '../../src/headless/index.js';
import { type Quote, recalculatedQuote, shown, source } from './quote.js';

/** Derived by hand from the rules of the trade; the arithmetic stands in the last column of the source. */
const expected = source('expected');
const parts = source('parts');
const shareTolerance = 0.0006;
/** Steel: 490 lb/ft³ by hand, 7850 kg/m³ in the calculation. */
const massTolerance = 0.002;

let quote: Quote;
beforeAll(async () => {
  quote = await recalculatedQuote();
});

const cell = (mark: string, column: string, from = quote) => from.rows.get(mark)?.[column];

describe('the example quote, recalculated through the built functions', () => {
  it('lists the same marks as the parts, in the same order', () => {
    expect([...quote.rows.keys()]).toEqual(parts.map(({ Mark }) => Mark));
    expect(expected.map(({ Mark }) => Mark)).toEqual(parts.map(({ Mark }) => Mark));
  });

  it('gives every row the verdict derived by hand', () => {
    const differences = expected
      .filter(({ Mark = '', Verdict = '' }) => shown(cell(Mark, 'Verdict')) !== Verdict)
      .map(
        ({ Mark = '', Verdict, Reason }) =>
          `${Mark}: ${shown(cell(Mark, 'Verdict'))}, expected ${Verdict} (${Reason}). Note: ${shown(cell(Mark, 'Note'))}`,
      );
    expect(differences).toEqual([]);
  });

  it('gives every row the share of rating calculated by hand, to three digits', () => {
    const withShare = expected.filter(({ Share }) => Share !== '');
    const differences = withShare
      .filter(({ Mark = '', Share }) => {
        const share = cell(Mark, 'Share of rating');
        return !(typeof share === 'number' && Math.abs(share - Number(Share)) <= shareTolerance);
      })
      .map(
        ({ Mark = '', Share, Working }) =>
          `${Mark}: ${shown(cell(Mark, 'Share of rating'))}, expected ${Share} (${Working})`,
      );
    expect(withShare.length).toBeGreaterThan(25);
    expect(differences).toEqual([]);
  });

  it('says in the note what decided, with the numbers that were compared', () => {
    const fragments = expected.flatMap(({ Mark = '', 'Note says': says = '' }) =>
      says === '' ? [] : says.split('|').map((fragment) => ({ Mark, fragment })),
    );
    const missing = fragments
      .filter(
        ({ Mark, fragment }) => !shown(cell(Mark, 'Note')).toLowerCase().includes(fragment.toLowerCase()),
      )
      .map(({ Mark, fragment }) => `${Mark}: no "${fragment}" in: ${shown(cell(Mark, 'Note'))}`);
    expect(missing).toEqual([]);
  });

  it('shows every verdict word at least once, and a note on every row that is not OK', () => {
    const seen = new Set([...quote.rows.values()].map((row) => shown(row.Verdict)));
    // Every row of the example has a part.
    expect(verdicts.filter((word) => !seen.has(word))).toEqual(['No part']);
    const silent = expected.filter(
      ({ Mark = '', Verdict }) => Verdict !== 'OK' && Verdict !== '' && shown(cell(Mark, 'Note')) === '',
    );
    expect(silent.map(({ Mark }) => Mark)).toEqual([]);
  });

  it('leaves the subtotal and the blank row blank in every check column', () => {
    for (const mark of ['Subtotal', '']) {
      const checks = [
        ...['Verdict', 'Share of rating', 'Governs', 'Note', 'Force', 'Hits', 'Mass'],
        ...['Route', 'Minutes', 'Cost'],
      ];
      expect(checks.map((column) => cell(mark, column))).toEqual(checks.map(() => ''));
    }
  });

  it.each([
    // 6 pieces × 4 holes; 0.5×10×10 in³ × 490/1728 lb/in³ × 6; 143.1 kip / 2
    { mark: 'BP1', hits: 24, massLb: 85.07, forceUsTon: 71.55 },
    // 48 × 2; (0.25×5.75)×6 in³ × 490/1728 × 48; 1.4375 in² × 60 ksi / 2
    { mark: 'CL1', hits: 96, massLb: 117.39, forceUsTon: 43.13 },
    // 11.5 lb/ft × 11.875 ft × 4; sawn
    { mark: 'ST1', hits: 0, massLb: 546.25, forceUsTon: undefined },
    // π/4×0.75² × 18 in³ × 490/1728 × 20; 0.4418 in² × 60 ksi / 2
    { mark: 'LR1', hits: 0, massLb: 45.1, forceUsTon: 13.25 },
  ])('gives $mark the hits, mass and force calculated by hand', ({ mark, hits, massLb, forceUsTon }) => {
    expect(cell(mark, 'Hits')).toBe(hits);
    expect(Math.abs(Number(cell(mark, 'Mass')) / massLb - 1)).toBeLessThan(massTolerance);
    if (forceUsTon === undefined) expect(cell(mark, 'Force')).toBe('');
    else expect(Math.abs(Number(cell(mark, 'Force')) - forceUsTon)).toBeLessThan(0.006);
  });

  it('has one stamp for the whole workbook, and no cell is pinned, stale or in error', () => {
    const stamp = readSheetValues(quote.bytes, 'Shop')[3]?.[1];
    expect(stamp).toMatch(/^in · 2 presses · rules \d+ · [A-HJ-NP-Z2-9]{4}(?:-[A-HJ-NP-Z2-9]{4}){2}$/);
    expect(readSheetValues(quote.bytes, 'Quote')[2]?.[4]).toBe(stamp);
    expect(quote.report).toMatchObject({ pinned: [], stale: [], errors: [] });
  });
});

describe('the sheets that hang on the checks', () => {
  it('spills the list check row for row beside the marks, the same as the table', () => {
    const [headings, ...rows] = readSheetValues(quote.bytes, 'List check').slice(4);
    expect(headings).toEqual(['Mark', 'Verdict', 'Share of rating']);
    const fromTable = [...quote.rows].map(([mark, row]) => [mark, row.Verdict, row['Share of rating']]);
    expect(rows).toEqual(fromTable);
  });

  it('counts each verdict, adds the mass and finds the greatest share', () => {
    const summary = new Map(
      readSheetValues(quote.bytes, 'Summary').map(([label, value]) => [String(label), value]),
    );
    const counts = verdicts.map((word) => [word, expected.filter(({ Verdict }) => Verdict === word).length]);
    expect(counts.map(([word]) => [word, summary.get(String(word))])).toEqual(counts);
    expect(summary.get('Rows checked')).toBe(expected.filter(({ Verdict }) => Verdict !== '').length);
    const numbers = (column: string) =>
      [...quote.rows.values()].map((row) => row[column]).filter((value) => typeof value === 'number');
    expect(summary.get('Total mass, lb')).toBeCloseTo(
      numbers('Mass').reduce((a, b) => a + b, 0),
      6,
    );
    expect(summary.get('Greatest share of rating')).toBe(Math.max(...numbers('Share of rating')));
  });

  it('keeps the values of the formulas that do not hang on the checks', () => {
    const rows = readSheetValues(quote.bytes, 'Summary');
    const heading = rows.findIndex(([label]) => label === 'Press time');
    // 9.5 h × 85 and 12.25 h × 110
    expect(rows.slice(heading + 1, heading + 4)).toEqual([
      ['Bay A', 9.5, 85, 807.5],
      ['Bay B', 12.25, 110, 1347.5],
      ['Press cost', 21.75, null, 2155],
    ]);
    expect(cell('Subtotal', 'Qty')).toBe(44);
  });
});
