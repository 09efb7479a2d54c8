import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { checkRow } from '../../src/core/row/checkRow.js';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import { lengthAsTyped } from '../../src/core/row/lengthAsTyped.js';
import { readRow } from '../../src/core/row/readRow.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { partDrawing } from '../../src/drawing/part/partDrawing.js';
import { svg } from '../../src/print/svg.js';
import { launchChromium } from '../support/chromium.js';
import { shopWith } from '../support/sampleShop.js';

/** `DRAWINGS=1000` draws as many; a slice of them runs with all tests. */
const count = Number(process.env['DRAWINGS'] ?? 120);
const folder = path.join(root, 'out', 'drawings');

const inches = (...texts: string[]) => fc.constantFrom(...texts);
const some = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null, freq: 3 });
const hole = inches('9/16', '13/16', '15/16', '13/16x1-7/8', '1/4', '22 mm', '1-5/8');
const along = inches('1/2', '1', '1-1/2', '2', '50 mm', 'right 2');
const group = (further: '' | ' 2') => ({
  [`Hole${further}`]: further ? some(hole) : hole,
  [`Holes${further}`]: fc.constantFrom(1, 2, 3, 4, 9, '2 each end'),
  [`Bolt${further}`]: fc.constant('none'),
  [`Edge${further}`]: some(inches('1/2', '1-1/4', '2', '3', '40 mm')),
  [`End${further}`]: some(along),
  [`Pitch${further}`]: some(inches('1', '2-1/2', '3', '75 mm', '2@3')),
  [`Gage${further}`]: some(inches('1-1/2', '2', '2-1/2', '4')),
  [`Leg${further}`]: inches('long', 'short'),
});
const row = fc.record({
  Section: inches(
    ...[
      'PL3/8X4',
      'PL1/2X10',
      'PL3/8X12',
      'FB1/4X1',
      'FB3/8x3',
      'FB1/2X6',
      'L3X3X1/4',
      'L4X3X3/8',
      'L6X4X1/2',
    ],
    ...['C8X11.5', 'C6X8.2', 'RB1', 'SQ3/4'],
  ),
  Grade: inches('A36', 'A572 Gr 50'),
  Length: some(inches('7', '12', `24'-0`, `3'-6 1/2"`, '400 mm', '96', '18')),
  ...group(''),
  ...group(' 2'),
  'Miter left': some(fc.constantFrom(15, 45)),
  'Miter right': some(fc.constantFrom(30, 45)),
  'Corner clip': some(inches('1', '3/4 x 1-1/2')),
  'Notch width': some(inches('1', '2')),
  'Notch depth': some(inches('1', '3/4')),
  'Notch at': some(inches('bottom edge 3', 'top left')),
  'Bend length': some(inches('4', '10')),
  'Bend at': some(inches('left end 2', 'bottom edge 1')),
});

interface Part {
  row: Record<string, unknown>;
  drawing: Drawing;
}

/** The random rows that can be drawn, each as wide as one of the panes that there are. */
function parts(): Part[] {
  const shop = shopWith({});
  const drawn: Part[] = [];
  const rows = fc.sample(fc.tuple(row, fc.constantFrom(290, 420, 640, 880)), { numRuns: 3 * count, seed: 7 });
  for (const [cells, width] of rows) {
    // Further work stands in few rows: a part with all of it is refused.
    const keep = Object.entries(cells)
      .filter(([name], at) => !/Miter|clip|Notch|Bend| 2$/.test(name) || (drawn.length + at) % 3 === 0)
      .filter(([name]) => !name.startsWith('Leg') || cells.Section.startsWith('L'));
    const read = readHeadings(keep.map(([name]) => name));
    const values = keep.map(([, value]) => value);
    const result = checkRow(values, read, shop);
    if (result.blank) continue;
    const job = readRow(values, read, shop);
    const length = lengthAsTyped(values, read, job.lengthMm, 'in');
    // Of a row that is refused for something else, too, a distance that fails is drawn.
    const failed = result.findings.find(({ rule, outcome }) => rule === 'distance' && outcome === 'failed');
    const input = {
      job,
      deciding: failed ?? result.deciding,
      unit: 'in',
      shop,
      length,
      mark: 'P',
      width,
    } as const;
    const drawing = partDrawing(input);
    if (!('problem' in drawing)) drawn.push({ row: Object.fromEntries(keep), drawing });
    if (drawn.length === count) break;
  }
  return drawn;
}

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
});
afterAll(() => browser.close());

const style =
  'body{margin:0} svg{display:block;margin:8px} text{font:12px "Segoe UI",sans-serif} text[font-weight]{font-size:13px;font-weight:600}';

async function show(drawings: readonly Drawing[]): Promise<void> {
  const pictures = drawings.map((drawing) => svg(drawing, drawing.title).text);
  await page.setContent(`<style>${style}</style>${pictures.join('')}`);
}

/** By drawing: texts that lie over each other, and texts that leave the frame, by the boxes that the browser gives them. */
async function faults(): Promise<string[][]> {
  return page.evaluate(() => {
    // A box of text has room above and below its letters.
    const inked = (text: Element) => {
      const { left, right, top, bottom } = text.getBoundingClientRect();
      const [x, y] = text.hasAttribute('transform') ? [3, 1] : [1, 3];
      return {
        text: text.textContent ?? '',
        left: left + x,
        right: right - x,
        top: top + y,
        bottom: bottom - y,
      };
    };
    return [...document.querySelectorAll('svg')].map((drawing) => {
      const frame = drawing.getBoundingClientRect();
      const boxes = [...drawing.querySelectorAll('text')].map(inked);
      return boxes.flatMap((a, at) => [
        ...(a.left < frame.left || a.right > frame.right || a.top < frame.top || a.bottom > frame.bottom
          ? [`${a.text} leaves the frame`]
          : []),
        ...boxes
          .slice(at + 1)
          .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
          .map((b) => `${a.text} over ${b.text}`),
      ]);
    });
  });
}

describe(`drawings of ${count} random parts`, () => {
  const all = parts();

  it('are of all kinds', () => {
    expect(all).toHaveLength(count);
    const texts = all.map(({ drawing: { shapes } }) => shapes.filter(({ kind }) => kind === 'text').length);
    expect(Math.max(...texts)).toBeGreaterThan(12);
    const boxed = all.filter(({ drawing: { shapes } }) =>
      shapes.some((shape) => shape.kind === 'text' && shape.behind === 'box'),
    );
    expect(boxed.length).toBeGreaterThan(count / 12);
  });

  it('have no label over another, and none leaves its frame', async () => {
    const found: string[] = [];
    for (let from = 0; from < all.length; from += 100) {
      const some = all.slice(from, from + 100);
      await show(some.map(({ drawing }) => drawing));
      for (const [at, wrong] of (await faults()).entries())
        if (wrong.length > 0)
          found.push(`${from + at} ${wrong.join('; ')} in ${JSON.stringify(some[at]?.row)}`);
    }
    expect(found).toEqual([]);
  });

  it('would be found out where a label were moved over another or out of the frame', async () => {
    await show(all.slice(0, 1).map(({ drawing }) => drawing));
    await page.evaluate(() => {
      const [first, second, third] = document.querySelectorAll('text');
      for (const at of ['x', 'y', 'text-anchor', 'transform'])
        if (second?.hasAttribute(at)) first?.setAttribute(at, second.getAttribute(at) ?? '');
      third?.setAttribute('x', '-60');
    });
    const [wrong = []] = await faults();
    expect(wrong.join('\n')).toMatch(/ over /);
    expect(wrong.join('\n')).toMatch(/leaves the frame/);
  });

  it.runIf(process.env['DRAWINGS'])('are there to look at, twenty of them', async () => {
    mkdirSync(folder, { recursive: true });
    for (let from = 0; from < 20; from += 5) {
      await show(all.slice(from * 3, from * 3 + 5).map(({ drawing }) => drawing));
      await page.screenshot({ path: path.join(folder, `random-${from / 5 + 1}.png`), fullPage: true });
    }
    expect(readFileSync(path.join(folder, 'random-1.png')).length).toBeGreaterThan(10_000);
  });
});
