import { beforeAll, describe, expect, it } from 'vitest';
import { readSheetValues } from '../../src/headless/index.js';
import { changedMarks, pressChange, type Quote, recalculatedQuote, shown, source } from './quote.js';

const parts = source('parts');

let quote: Quote;
beforeAll(async () => {
  quote = await recalculatedQuote();
});

const cell = (mark: string, column: string, from = quote) => from.rows.get(mark)?.[column];
/** The press can do it: nothing of it is wanting. */
const passes = (verdict: string | undefined) => ['OK', 'Near limit', 'OK so far'].includes(verdict ?? '');
const at = (press: string) => parts.filter(({ Press }) => Press === press);
const punched = ({ Hole, Bolt }: Record<string, string>) => Hole !== '' || Bolt !== '';
const flat = ({ Section = '' }: Record<string, string>) => /^(?:PL|FB)/.test(Section);
const angle = ({ Section = '' }: Record<string, string>) => Section.startsWith('L');
const mitered = ({ 'Miter left': left }: Record<string, string>) => left !== '';
const round = ({ Section = '' }: Record<string, string>) => Section.startsWith('RB');
const square = ({ Section = '' }: Record<string, string>) => Section.startsWith('SQ');
const marksOf = (rows: Record<string, string>[]) => rows.map(({ Mark = '' }) => Mark);

describe('one changed value in the Shop sheet', () => {
  it('a smaller punch force of Bay A changes the share of the rows whose punching then governs, and no other', async () => {
    const after = await recalculatedQuote([pressChange('Punch force', 'Bay A', 40)]);
    // 110 / 80: every punching share at Bay A grows by 1.375 and passes that of the cut, but for the rows whose
    // hole could not be read.
    const unread = ['BK7', 'BK8'];
    const punchedAtA = marksOf(
      at('Bay A').filter((part) => punched(part) && !unread.includes(part.Mark ?? '')),
    );
    const changed = changedMarks(quote, after, ['Verdict', 'Share of rating']);
    expect(changed).toEqual(punchedAtA);
    // 0.910 × 1.375 = 1.252: the only verdict that changes.
    expect(changedMarks(quote, after, ['Verdict'])).toEqual(['BK6']);
    expect(cell('BK6', 'Verdict', after)).toBe('Over capacity');
    expect(cell('SP2', 'Share of rating', after)).toBeCloseTo(0.7977, 3);
  });

  it('the blank limit filled in turns its one row from Not checked to OK, and no other', async () => {
    const after = await recalculatedQuote([pressChange('Bar shear square', 'Bay B', 1)]);
    expect(changedMarks(quote, after, ['Verdict', 'Share of rating', 'Governs', 'Note'])).toEqual(['PK2']);
    expect(cell('PK2', 'Verdict', after)).toBe('OK');
    // (3/4)² × 60 / (1² × 50)
    expect(cell('PK2', 'Share of rating', after)).toBeCloseTo(0.675, 3);
  });

  it('the hourly rate changes the press cost, the cost of the rows of that press, and no check', async () => {
    const after = await recalculatedQuote([pressChange('Hourly rate', 'Bay A', 90)]);
    expect(changedMarks(quote, after, ['Verdict', 'Share of rating', 'Governs', 'Note'])).toEqual([]);
    const made = marksOf(at('Bay A')).filter((mark) => typeof cell(mark, 'Minutes') === 'number');
    expect(changedMarks(quote, after, ['Minutes', 'Cost'])).toEqual(made);
    for (const mark of made) {
      const more = Number(cell(mark, 'Cost', after)) - Number(cell(mark, 'Cost'));
      expect(more).toBeCloseTo((Number(cell(mark, 'Minutes')) / 60) * (90 - 85), 9);
    }
    const rows = readSheetValues(after.bytes, 'Summary');
    expect(rows.find(([label]) => label === 'Press cost')).toEqual(['Press cost', 21.75, null, 2202.5]);
  });

  it('a press value that cannot be read fails the rows that need it, and no other', async () => {
    const after = await recalculatedQuote([pressChange('Bar shear round', 'Bay A', 'abc')]);
    const needing = marksOf(at('Bay A').filter(round));
    expect(changedMarks(quote, after, ['Verdict'])).toEqual(needing);
    for (const mark of needing) expect(cell(mark, 'Verdict', after)).toBe('Check input');
  });
});

interface Blanked {
  press: string;
  item: string;
  /** Whether a row of that press needs the limit. */
  applies: (part: Record<string, string>) => boolean;
  /** Rows that failed by this very limit, and now are not checked against it. */
  freed?: string[];
}

describe('a blank limit', () => {
  it.each<Blanked>([
    { press: 'Bay A', item: 'Punch force', applies: punched },
    { press: 'Bay A', item: 'Punch throat', applies: punched, freed: ['GP3'] },
    { press: 'Bay A', item: 'Punch largest hole', applies: punched },
    { press: 'Bay A', item: 'Punch largest hole thickness', applies: punched },
    { press: 'Bay A', item: 'Punch stroke', applies: punched },
    { press: 'Bay A', item: 'Flat shear', applies: flat },
    { press: 'Bay A', item: 'Flat shear blade length', applies: flat },
    { press: 'Bay A', item: 'Flat shear rake', applies: flat, freed: ['BP6'] },
    { press: 'Bay A', item: 'Bar shear round', applies: round },
    { press: 'Bay A', item: 'Bar shear square', applies: square },
    { press: 'Bay A', item: 'Longest bar', applies: () => true, freed: ['TP2'] },
    { press: 'Bay A', item: 'Heaviest bar', applies: () => true },
    { press: 'Bay B', item: 'Angle shear leg square', applies: (part) => angle(part) && !mitered(part) },
    { press: 'Bay B', item: 'Angle shear thickness at 45°', applies: mitered, freed: ['AF4'] },
    {
      press: 'Bay B',
      item: 'Punch die half width',
      applies: (part) => angle(part) && punched(part),
      freed: ['CL6'],
    },
    { press: 'Bay B', item: 'Punch clear under die', applies: (part) => angle(part) && punched(part) },
  ])(
    '$item of $press makes the rows that need it Not checked, never OK, and no other',
    async ({ press, item, applies, freed = [] }) => {
      const after = await recalculatedQuote([pressChange(item, press, null)]);
      // CL4 names no press, and only Bay B can run it.
      const tried = parts.filter(
        ({ Press, Mark }) => Press === press || (press === 'Bay B' && Mark === 'CL4'),
      );
      const passing = marksOf(tried.filter(applies)).filter((mark) => passes(shown(cell(mark, 'Verdict'))));
      expect(passing.length).toBeGreaterThan(0);
      const expectedMarks = [...quote.rows.keys()].filter(
        (mark) => passing.includes(mark) || freed.includes(mark),
      );
      expect(
        changedMarks(quote, after, ['Verdict']).map(
          (mark) => `${mark}: ${shown(cell(mark, 'Verdict', after))}`,
        ),
      ).toEqual(expectedMarks.map((mark) => `${mark}: Not checked`));
    },
  );

  it.each([
    { what: 'a punch station that is neither yes nor no', items: ['Punch'], applies: punched },
    {
      what: 'the sizes of the flat shear, where its force has no limit',
      items: [
        'Flat shear widest bar',
        'Flat shear widest bar thickness',
        'Flat shear thickest bar',
        'Flat shear thickest bar width',
      ],
      applies: flat,
    },
    {
      what: 'the punch force and the largest hole',
      items: ['Punch force', 'Punch largest hole', 'Punch largest hole thickness'],
      applies: punched,
    },
  ])('$what, blank, leaves no row that needs it OK', async ({ items, applies }) => {
    const after = await recalculatedQuote(items.map((item) => pressChange(item, 'Bay A', null)));
    const needing = marksOf(at('Bay A').filter(applies));
    expect(needing.length).toBeGreaterThan(10);
    expect(needing.filter((mark) => passes(shown(cell(mark, 'Verdict', after))))).toEqual([]);
  });
});
