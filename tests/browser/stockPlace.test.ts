import { describe, expect, it } from 'vitest';
import { everyLook, type Look, type OpenPane, paneTests } from './pane/paneBrowser.js';

const openPane = paneTests();

/** The place over a rack's list, planned with invented lengths where none are known. */
async function planned(look: Look): Promise<OpenPane> {
  const open = await openPane('shop-bars-stock', look);
  await open.tab('Stock');
  await open.page.getByLabel(/Where no length is known/).check();
  await open.click('Plan the bars');
  await open.says('To buy: RB3/4, A36');
  return open;
}

describe.each(everyLook)('Stock for everybody to use, $name', (look) => {
  it('shows the plan, its drawings and its lists without a fault', async () => {
    const open = await planned(look);
    const focused = await open.page.evaluate(() => document.activeElement?.textContent);
    expect(focused).toBe('Plan again');
    for (const summary of await open.page.getByText(/^How to cut them/).all())
      if ((await summary.locator('..').getAttribute('open')) === null) await summary.click();
    await open.says('Cut list: PIPE2STD, A53-B, bar 1');
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    const sideways = await open.page
      .getByRole('region')
      .evaluateAll((regions) =>
        regions
          .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)
          .map((region) => region.getAttribute('aria-label')),
      );
    expect(sideways).toEqual([]);
    await open.shot('stock');
  });
});

const [narrow = { name: 'light-320', width: 320 }] = everyLook;

describe('Stock in a browser', () => {
  it('is reached by keyboard, all of it', async () => {
    const open = await planned(narrow);
    expect(await open.unreached()).toEqual([]);
  });

  it('prints a page whose strips are as wide as the paper, each with its list', async () => {
    const open = await planned(narrow);
    await open.click('Print');
    const page = open.page.frameLocator('iframe[title="Plan"]');
    await page.locator('.bar svg').first().waitFor();
    const bars = await page.locator('.bar').evaluateAll((all) =>
      all.map((bar) => ({
        strip: bar.querySelectorAll('svg').length,
        list: bar.querySelectorAll('table').length,
      })),
    );
    expect(bars.length).toBeGreaterThan(5);
    expect(new Set(bars.map((bar) => JSON.stringify(bar)))).toEqual(new Set(['{"strip":1,"list":1}']));
    expect([...(await open.faults()), ...open.errors]).toEqual([]);
    await open.shot('stock-print');
  });
});
