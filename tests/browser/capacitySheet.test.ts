import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { findGrade } from '../../src/core/material/findGrade.js';
import { readShop, type Shop } from '../../src/core/shop/readShop.js';
import { capacitySheet } from '../../src/drawing/capacity/sheet/capacitySheet.js';
import { capacityPage } from '../../src/print/capacity/capacityPage.js';
import { starterPresses, starterSettings } from '../../src/taskpane/shop/sheet/starter.js';
import { launchChromium } from '../support/chromium.js';
import { shopWith } from '../support/sampleShop.js';

const folder = path.join(root, 'out', 'capacity');
const usual = { in: ['A36', 'A572-50', '304'], mm: ['S235', 'S275', 'S355'] };
const starter = (unit: 'in' | 'mm') =>
  readShop({ presses: starterPresses(unit), settings: starterSettings(unit) });

function pageOf(shop: Shop, at: number): string {
  const press = shop.presses[at];
  if (!press) throw new Error('no such press');
  const grades = usual[shop.unit].map((name) => findGrade(name, 'Grade'));
  return capacityPage(capacitySheet(press, shop, grades), {
    unit: shop.unit,
    stamp: shop.stamp,
    date: '2026-11-29',
  });
}

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
  mkdirSync(folder, { recursive: true });
});
afterAll(() => browser.close());

it.each([
  ['every-station', shopWith(), 0],
  ['bay-b', starter('in'), 1],
  ['bay-b-mm', starter('mm'), 1],
  ['unknown', shopWith({ 'Punch stroke': null, 'Angle shear': null, 'Bend V openings': null }), 0],
] as const)(
  'the sheet of %s is one page of letter and of A4, and no row is split',
  async (name, shop, at) => {
    const page = await browser.newPage();
    await page.setContent(pageOf(shop, at));
    for (const format of ['Letter', 'A4'] as const) {
      const pdf = await page.pdf({ format, preferCSSPageSize: false });
      writeFileSync(path.join(folder, `${name}-${format}.pdf`), pdf);
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    }
    await page.setViewportSize({ width: 816, height: 1056 });
    await page.screenshot({ path: path.join(folder, `${name}.png`), fullPage: true });
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll('th, td')]
        .filter((cell) => cell.getBoundingClientRect().right > document.documentElement.clientWidth)
        .map((cell) => cell.textContent),
    );
    expect(cut).toEqual([]);
    await page.close();
  },
);

it('says of an invented press that it is invented, and of unknown values that they are not known', () => {
  expect(pageOf(starter('in'), 0)).toContain('INVENTED PRESS');
  const unknown = pageOf(shopWith({ 'Punch stroke': null }), 0);
  expect(unknown).not.toContain('INVENTED');
  expect(unknown).toContain('? not known');
});
