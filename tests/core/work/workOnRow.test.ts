import { describe, expect, it } from 'vitest';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { workBasis } from '../../../src/core/say/workBasis.js';
import { workOnChecked } from '../../../src/core/work/workOnRow.js';
import { Working } from '../../../src/core/working/working.js';
import { inShopUnit } from '../../../src/core/quantity/shopUnit.js';
import { type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';

const headings = readHeadings(['Section', 'Grade', 'Length', 'Hole', 'Holes', 'Press']);

it('a row with a cell that cannot be read has no time: what it says there would be left out', () => {
  const shop = shopWith();
  const cells = ['PL3/8X6', 'A36', '8', '4-13/16Ø', null, 'Bay A'];
  const work = workOnChecked(checkedPart(cells, headings, shop), shop);
  expect(work).toEqual({ is: 'not made', verdict: 'Check input' });
  expect(workBasis(work)).toBe('No time: the row is Check input.');
});

describe('what a price stands on', () => {
  const cells = ['FB3/8X4', 'A36', 12, null, null, 'Bay A'];
  function worked(settings: PressCells, press: PressCells = {}) {
    const shop = shopWith({ 'Hourly rate': 60, ...press }, { settings: settingTable(settings) });
    const working = new Working();
    const work = workOnChecked(checkedPart(cells, headings, shop), shop, working);
    if (work.is !== 'timed') throw new Error(work.is);
    return { work, working, basis: workBasis(work) };
  }

  it('names the pieces whose price is the least that a job is sold for', () => {
    const settings = { Markup: 0.1, 'Quantity breaks': '1; 2; 10000', 'Minimum charge': 100 };
    const { work, basis } = worked(settings);
    expect(work.money.breaks.slice(0, 2)).toEqual([
      { pieces: 1, each: 100 },
      { pieces: 2, each: 50 },
    ]);
    expect(basis).toContain(
      'At a quantity of 1 or 2 the price each is the Minimum charge of the shop, shared out.',
    );
    expect(worked({ ...settings, 'Minimum charge': null }).basis).not.toContain('Minimum charge');
  });

  it('says that one was taken for a crew that is paid each and not given', () => {
    const each = { 'Rate includes crew': 'no' };
    expect(worked(each).basis).toContain('Assumed until Bay A says otherwise: 1 for Crew.');
    expect(worked(each, { Crew: 2 }).basis).not.toContain('Crew');
    expect(worked({}).basis).not.toContain('Crew');
  });

  // 0.62 a pound times the pounds of the row is the material, as whoever checks it by hand multiplies it.
  it('shows the price of steel for the mass that it shows', () => {
    const { working } = worked({ 'Material price': '62 per cwt' });
    const step = working.steps.find(({ title }) => title === 'Cost of the material');
    const shown = (symbol: string) => {
      const found = step?.values.find((each) => each.symbol === symbol);
      if (typeof found?.value !== 'number' || found.kind === 'text') throw new Error(symbol);
      return inShopUnit(found.value, found.kind, 'in');
    };
    expect(shown('p')).toBeCloseTo(0.62, 9);
    expect(shown('m') * shown('p')).toBeCloseTo(Number(step?.result.value), 9);
  });

  it('leaves the time where a cell of the cost cannot be read, and says why there is no cost', () => {
    for (const [settings, press, why] of [
      [{ 'Material price': 'ask' }, {}, 'Settings, Material price'],
      [{ Markup: 0.1, Margin: 0.2 }, {}, 'Markup and Margin are both given'],
      [{}, { 'Hourly rate': 'ask' }, 'Bay A, Hourly rate'],
    ] as const) {
      const { work, basis } = worked(settings, press);
      expect(work.time.seconds).toBe(worked({}).work.time.seconds);
      expect(work.money.cost).toBeUndefined();
      expect(basis).toContain('No cost: ');
      expect(basis).toContain(why);
      expect(basis).not.toContain('give the Hourly rate');
    }
  });
});
