import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import type { Shop } from '../../src/core/shop/readShop.js';
import { cardOfRow } from '../../src/print/card/cardRows.js';
import { cardsPage } from '../../src/print/card/cardsPage.js';
import { launchChromium } from '../support/chromium.js';
import { exampleCards, exampleJob } from '../support/exampleCards.js';
import { settingTable, shopWith } from '../support/sampleShop.js';

const folder = path.join(root, 'out', 'cards');
let browser: Browser;
let page: Page;
beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  browser = await launchChromium();
  page = await browser.newPage({ viewport: { width: 780, height: 1000 } });
});
afterAll(() => browser.close());

async function show(text: string): Promise<void> {
  await page.setContent(text);
  await page.emulateMedia({ media: 'print' });
}

/** How many pages a print has, from the page objects of the file. */
async function pagesOf(name: string, format: 'Letter' | 'A4'): Promise<number> {
  const file = path.join(folder, `${name}-${format}.pdf`);
  await page.pdf({ path: file, format });
  return readFileSync(file, 'latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** A picture of every sheet, to be looked at. */
async function shots(name: string): Promise<void> {
  for (const [at, sheet] of (await page.locator('.sheet').all()).entries())
    await sheet.screenshot({ path: path.join(folder, `${name}-${at + 1}.png`) });
}

/** What is wrong with the cards as they lie on the page: labels over labels, out of their drawing, cards too full. */
function faults(): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const inked = ({ left, right, top, bottom }: DOMRect) => ({
      left: left + 1,
      right: right - 1,
      // A box of text has room above and below its letters.
      top: top + 3,
      bottom: bottom - 3,
    });
    for (const card of document.querySelectorAll('.card')) {
      const mark = card.querySelector('.mark')?.textContent ?? '';
      const most = card.classList.contains('whole') ? 983 : 486;
      if (card.getBoundingClientRect().height > most) found.push(`${mark}: too high`);
      if (card.scrollWidth > card.clientWidth + 1) found.push(`${mark}: too wide`);
      const leaves = [...card.querySelectorAll('svg text, dd, dt, li, .head span, p, footer, figcaption')];
      const boxes = leaves.map((each) => ({
        text: each.textContent ?? '',
        ...inked(each.getBoundingClientRect()),
      }));
      boxes.forEach((a, at) => {
        for (const b of boxes.slice(at + 1))
          if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
            found.push(`${mark}: "${a.text}" over "${b.text}"`);
      });
      for (const drawing of card.querySelectorAll('svg')) {
        const frame = drawing.getBoundingClientRect();
        for (const text of drawing.querySelectorAll('text')) {
          const box = inked(text.getBoundingClientRect());
          if (
            box.left < frame.left ||
            box.right > frame.right ||
            box.top < frame.top ||
            box.bottom > frame.bottom
          )
            found.push(`${mark}: "${text.textContent}" leaves its drawing`);
        }
      }
      for (const each of card.querySelectorAll('svg text, li')) {
        const { fontSize, color, fill } = getComputedStyle(each);
        if (Number.parseFloat(fontSize) < 12) found.push(`${mark}: "${each.textContent}" is under 9 pt`);
        if (color !== 'rgb(0, 0, 0)' || (each.tagName === 'text' && fill !== 'rgb(0, 0, 0)'))
          found.push(`${mark}: "${each.textContent}" is not black`);
      }
    }
    return found;
  });
}

const cardOf = (mark: string) =>
  page.locator('.card').filter({ has: page.locator('.mark', { hasText: new RegExp(`^${mark}$`) }) });
const parts = readFileSync(path.join(root, 'examples/quote/parts.tsv'), 'utf8')
  .split('\n')
  .slice(1)
  .map((line) => line.split('\t')[0] ?? '')
  .filter((mark) => mark !== '' && mark !== 'Subtotal');

describe('the cards of the example, every mark', () => {
  it('have no label over another, and each fits its half of the page or its page', async () => {
    await show(exampleCards({ marks: parts }).page);
    expect(await page.locator('.card').count()).toBe(parts.length);
    expect(await faults()).toEqual([]);
  });

  it('would be found out where a label stood over another, left its drawing, or a card were too full', async () => {
    await show(exampleCards({ marks: ['BP1'] }).page);
    await page.evaluate(() => {
      const [first, second, third] = document.querySelectorAll('svg text');
      first?.setAttribute('x', second?.getAttribute('x') ?? '');
      first?.setAttribute('y', second?.getAttribute('y') ?? '');
      third?.setAttribute('x', '-30');
      document
        .querySelector('.steps')
        ?.append(...Array.from({ length: 40 }, () => document.createElement('li')));
      document.querySelectorAll('.steps li:empty').forEach((each) => (each.textContent = 'more'));
    });
    const found = (await faults()).join('\n');
    expect(found).toContain('over "');
    expect(found).toContain('leaves its drawing');
    expect(found).toContain('BP1: too high');
  });

  it('lie two on a sheet of letter or A4', async () => {
    await show(exampleCards().page);
    const cardSheets = await page.locator('.sheet:has(.card)').count();
    const [halves, wholes] = [
      await page.locator('.card:not(.whole)').count(),
      await page.locator('.whole').count(),
    ];
    expect(cardSheets).toBeLessThanOrEqual(halves / 2 + 2 * wholes + 1);
    expect(wholes).toBeLessThan(halves / 5);
    for (const format of ['Letter', 'A4'] as const) await pagesOf('example', format);
    await page.evaluate(() =>
      document.querySelectorAll('.sheet:has(.cuts)').forEach((each) => each.remove()),
    );
    const printed = [await pagesOf('cards-only', 'Letter'), await pagesOf('cards-only', 'A4')];
    expect(printed).toEqual([cardSheets, cardSheets]);
    await show(exampleCards().page);
    await shots('sheet');
  });

  it('have sizes as typed', async () => {
    await show(exampleCards({ marks: parts }).page);
    const texts = async (mark: string) => (await cardOf(mark).locator('svg text').allTextContents()).sort();
    expect(await texts('BP1')).toEqual(
      ['fence', 'stop', 'operator', '4 × Ø1-5/16', '2', '8', '10 in long', '2', '8', '10 wide']
        .concat(['1', '1', '2', '2'])
        .sort(),
    );
    expect(await cardOf('BK9').locator('.piece').textContent()).toBe('PL3/8X4 · A36 · 200 mm');
    expect(await texts('BK9')).toEqual(
      expect.arrayContaining(['50 mm', '150 mm', '200 mm long', '2 × Ø22 mm', '2', '4 wide']) as string[],
    );
    expect(await cardOf('TP1').locator('.piece').textContent()).toBe("FB1/4X4 · A36 · 18'-3");
    expect(await texts('CL1')).toEqual(
      expect.arrayContaining(['1-1/2', '4-1/2', '1-3/4', 'leg 3 down']) as string[],
    );
  });

  it('have reasons and no steps where a row cannot be made', async () => {
    const { page: text, withoutSteps } = exampleCards({ marks: parts });
    await show(text);
    const made = new Set(['OK', 'Near limit', 'Off press']);
    for (const card of await page.locator('.card').all()) {
      const verdict = (await card.locator('.verdict').textContent()) ?? '';
      const isMade = made.has(verdict);
      expect([verdict, (await card.locator('.steps li').count()) > 0]).toEqual([verdict, isMade]);
      expect([verdict, (await card.locator('.reasons li').count()) > 0]).toEqual([verdict, !isMade]);
      expect(await card.locator('.near').count()).toBe(verdict === 'Near limit' ? 1 : 0);
    }
    expect(withoutSteps).toContain('BP5  Too big');
    expect(await cardOf('BK1').locator('.reasons').textContent()).toContain(
      '7/8 in from the center to the right end is under 1-1/4 in',
    );
  });
});

const headings = [
  ...[
    'Mark',
    'Drawing',
    'Revision',
    'Qty',
    'Section',
    'Grade',
    'Length',
    'Hole',
    'Holes',
    'Bolt',
    'Edge',
    'End',
  ],
  ...['Pitch', 'Gage', 'Leg', 'Hole 2', 'Holes 2', 'Bolt 2', 'Edge 2', 'End 2', 'Pitch 2', 'Gage 2', 'Leg 2'],
  ...[
    'Notch width',
    'Notch depth',
    'Notch at',
    'Corner clip',
    'Clip at',
    'Bend length',
    'Bend at',
    'Holes at',
  ],
];
type Named = Record<string, CellValue>;
const plate = { Qty: 2, Section: 'PL3/8X8', Grade: 'A36', Length: 12 };
const angle = { Qty: 2, Section: 'L4X3X1/4', Grade: 'A36', Length: 20 };
const holes = { Hole: '13/16', Bolt: '3/4' };
const second = { 'Hole 2': '13/16', 'Bolt 2': '3/4' };

const odd: Record<string, Named> = {
  'both legs': {
    ...angle,
    ...holes,
    ...second,
    ...{ Holes: 2, End: 2, Pitch: 5, Gage: '2-1/2', Leg: 4 },
    ...{ 'Holes 2': 3, 'End 2': 2, 'Pitch 2': 3, 'Gage 2': '1-3/4', 'Leg 2': 3 },
  },
  'thirty holes': { ...plate, Length: 96, ...holes, Holes: 30, Edge: 2, End: 2, Pitch: '4', Gage: 4 },
  'two sizes': {
    ...plate,
    ...holes,
    ...{ Holes: 4, Edge: 2, End: 2, Pitch: 8, Gage: 4 },
    ...{ 'Hole 2': '9/16', 'Holes 2': 1, 'Bolt 2': '1/2', 'Edge 2': 4, 'End 2': 6 },
  },
  notched: {
    ...plate,
    'Notch width': 2,
    'Notch depth': 1,
    'Notch at': 'bottom edge 6',
    ...holes,
    Holes: 1,
    Edge: 4,
    End: 6,
  },
  clipped: {
    ...plate,
    'Corner clip': '1 x 1',
    'Clip at': 'top left',
    ...holes,
    Holes: 2,
    Edge: 4,
    End: 3,
    Pitch: 6,
  },
  bent: {
    ...plate,
    'Bend length': 8,
    'Bend at': 'left end 6',
    ...holes,
    Holes: 2,
    Edge: 4,
    End: 2,
    Pitch: 8,
  },
  'read places': { ...plate, ...holes, Holes: 4 },
  'a narrow bar': {
    Qty: 3,
    Section: 'FB1/2X1',
    Grade: 'A36',
    Length: 8,
    Hole: '9/16',
    Holes: 2,
    Bolt: 'none',
    Edge: '1/2',
    End: 2,
    Pitch: 4,
  },
  'a channel': {
    Qty: 1,
    Section: 'C8X11.5',
    Grade: 'A36',
    Length: 48,
    ...holes,
    Holes: 2,
    End: 4,
    Edge: 2,
    Gage: 4,
    Leg: 'web',
  },
  'a tube': { Qty: 1, Section: 'HSS4X4X1/4', Grade: 'A500', Length: 48 },
  'a mark that goes on and on and on so that it never ends': { ...plate },
};

function oddCards(rows: readonly Named[], shop: Shop): string {
  const read = readHeadings(headings);
  const cards = rows.flatMap(
    (row) =>
      cardOfRow(
        headings.map((name) => row[name] ?? null),
        read,
        shop,
      ) ?? [],
  );
  return cardsPage(cards, shop, exampleJob);
}

describe('cards of other parts', () => {
  const named = Object.entries(odd).map(([Mark, row]) => ({ Mark, ...row }));

  it('have no label over another, in inches and in millimeters', async () => {
    await show(oddCards(named, shopWith({})));
    await shots('odd');
    expect(await faults()).toEqual([]);
    const metric = named.map((row) =>
      Object.fromEntries(
        Object.entries(row).map(([name, value]) => [
          name,
          name !== 'Qty' && !name.startsWith('Holes') && !name.startsWith('Leg') && typeof value === 'number'
            ? `${value} in`
            : value,
        ]),
      ),
    );
    await show(oddCards(metric, shopWith({}, { settings: settingTable({ Units: 'mm' }) })));
    expect(await faults()).toEqual([]);
  });

  it('print no read place as a dimension', async () => {
    await show(oddCards([{ Mark: 'R', ...plate, ...holes, Holes: 4, End: 2, Edge: 2 }], shopWith({})));
    expect(await page.locator('.steps li').count()).toBe(0);
    const texts = await page.locator('svg text').allTextContents();
    // The first hole is placed by End and Edge; where the other three lie is read.
    expect(texts).not.toContain('10');
    expect(texts).toContain('12 in long');
  });

  it('hold text of the workbook as text', async () => {
    const hostile = '"><script>document.title="x"</script><img src=x onerror=alert(1)>';
    const row = Object.fromEntries(headings.map((name) => [name, hostile]));
    await show(
      oddCards([row, { ...plate, Mark: hostile, Drawing: hostile, Revision: hostile }], shopWith({})),
    );
    expect(await page.locator('script, img').count()).toBe(0);
    expect(await page.title()).toBe('Cards of quote.xlsx');
    expect(await page.locator('.mark').first().textContent()).toBe(hostile);
  });
});
