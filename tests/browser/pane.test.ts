import { describe, expect, it } from 'vitest';
import { everyLook, type Look, type OpenPane, paneTests } from './pane/paneBrowser.js';

const openPane = paneTests();

/** Goes through screens and gathers what is wrong with each. */
async function faultsOf(open: OpenPane, screens: Record<string, () => Promise<void>>): Promise<string[]> {
  const faults: string[] = [];
  for (const [name, show] of Object.entries(screens)) {
    await show();
    faults.push(...(await open.faults()).map((fault) => `${name}: ${fault}`));
    await open.shot(name);
  }
  return [...faults, ...open.errors];
}

describe.each(everyLook)('for everybody to use, $name', (look) => {
  it('the first screen, the preview, and the shop', async () => {
    const open = await openPane('empty', look);
    const faults = await faultsOf(open, {
      welcome: () => open.says('Will it run on your presses?'),
      preview: async () => {
        await open.click('Add shop sheet');
        await open.says('This will be written');
      },
      presses: async () => {
        await open.click('Write to sheet');
        await open.says('Done: Add shop sheet.');
        await open.says('55 US ton');
      },
      'new-press': async () => {
        await open.click('New press');
        await open.page.getByLabel('3. Throat').fill('abc');
        await open.click('Add press');
        await open.says('is not a length');
      },
      'press-form': async () => {
        await open.click('Cancel');
        await open.click('Edit Bay A');
        await open.click(/^Punch:/);
        await open.page.getByLabel('Stroke, in').fill('none');
        await open.page.getByLabel('Body, in').fill('');
      },
      'press-times': async () => {
        await open.page.getByText('Set-up, time and cost').click();
        await open.click(/^Time:/);
        await open.says('blank uses an invented time');
        await open.click(/^Gauges:/);
        await open.says('Needed for the settings of back gauge, fence and stops');
      },
      tools: async () => {
        await open.tab('Tools');
        await open.click('New tool');
      },
      grades: async () => {
        await open.tab('Grades');
        await open.click('New grade');
      },
      settings: () => open.tab('Settings'),
      'settings-cost': async () => {
        await open.click(/^Cost and price:/);
        await open.says('Needed for cost and price');
      },
    });
    expect(faults).toEqual([]);
  });

  it('one part, and a list', async () => {
    const open = await openPane('shop+list80', look);
    const faults = await faultsOf(open, {
      'one-part': async () => {
        // The banner moves what stands below it.
        await open.says('are invented presses');
        await open.click('Fill in an example');
        await open.says('Bay A has no angle shear.');
      },
      columns: async () => {
        await open.tab('Check a list');
        await open.says('2 guessed');
      },
      'add-checks': async () => {
        await open.click('Check this list');
        await open.page.getByText('Columns: verdict, share of rating, note').click();
        await open.page.getByLabel(/^Minutes:/).check();
        await open.says('and 1 more');
      },
      'add-minutes': async () => {
        await open.click('Add check columns');
        await open.says('will be overwritten');
      },
      group: async () => {
        await open.click('Write to sheet');
        await open.says('20 of 80 rows fail');
        await open.click(/rows · Edge short/);
        await open.says('Which press can run these rows');
        await open.click('Next row');
      },
      'all-rows': async () => {
        await open.click(/rows · Edge short/);
        await open.click('Compare presses on 80 rows');
        await open.says('Invented until the shop gives it');
      },
      broken: async () => {
        await open.page.evaluate(() => void window.tonrow.type('Shop', 7, 2, [['abc']]));
        await open.says("'abc' is not a force");
      },
    });
    expect(faults).toEqual([]);
  });
});

describe('by keyboard alone', () => {
  const look: Look = { name: 'keyboard', width: 350 };

  it('a shop is added, a press made, changed, and the change taken back', async () => {
    const open = await openPane('empty', look);
    await open.keys('Add shop sheet', 'Enter');
    await open.says('This will be written');
    await open.keys('Write to sheet', 'Enter');
    await open.says('Done: Add shop sheet.');
    await open.keys('New press', 'Enter');
    await open.typeInto(/^1\. Name/, 'Bay C');
    await open.typeInto('Punch force', '70');
    await open.typeInto(/^3\. Throat/, '9');
    await open.page.keyboard.press('Enter');
    await open.keys('Write to sheet', 'Enter');
    await open.says('in · 1 press');
    await open.keys(/^Flat shear:/, 'Enter');
    await open.chooseIn('On this press', 'yes');
    await open.typeInto('Blade length, in', '16');
    await open.page.keyboard.press('Enter');
    await open.keys('Write to sheet', 'Enter');
    await open.says('Done: Change Bay C.');
    await open.keys('Undo', 'Enter');
    await open.says('Done: Add press Bay C.');
    const blade = await open.page.evaluate(() =>
      window.tonrow.shown('Presses').find(([item]) => item === 'Flat shear blade length'),
    );
    expect(blade?.[2]).toBeNull();
    expect(open.errors).toEqual([]);
  });

  it('places are changed with the arrow keys, a list is checked, its groups walked, and its dates fixed', async () => {
    const open = await openPane('shop+list16', look);
    await open.keys('Try one part', 'ArrowRight', 'Enter');
    await open.says('2 guessed');
    await open.keys('Check this list', 'Enter');
    await open.keys('Add check columns', 'Enter');
    await open.keys('Write to sheet', 'Enter');
    await open.says('4 of 16 rows fail');
    await open.says('4 not fully checked');
    await open.says('11 of 15 columns are read');
    await open.says('2 rows · Edge short');
    await open.keys(/2 rows · Edge short/, 'Enter');
    await open.button('Next row').waitFor();
    await open.keys('Next row', 'Enter', 'Enter');
    await open.says('2 of 2: row 13, mark CL2-2');
    const visited = await open.page.evaluate(() => window.tonrow.visited.map(({ row }) => row + 1));
    expect(visited).toEqual([5, 13]);
    await open.keys(/rows · Check input/, 'Enter');
    await open.button('Fix 2 dates').waitFor();
    await open.keys('Fix 2 dates', 'Enter');
    await open.keys('Write to sheet', 'Enter');
    await open.says('2 not fully checked');
    await open.keys('Parts', 'ArrowLeft', 'Enter');
    await open.says('55 US ton');
    expect(open.errors).toEqual([]);
  });

  it('a dialog is closed with Escape and writes nothing', async () => {
    const open = await openPane('empty', look);
    await open.keys('Add shop sheet', 'Enter');
    await open.says('This will be written');
    await open.page.keyboard.press('Escape');
    await open.page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await open.page.evaluate(() => window.tonrow.memory.sheets.size)).toBe(1);
  });
});

describe('long work', () => {
  it('checks 20,000 rows with progress, and is stopped', async () => {
    const open = await openPane('shop+list20000', { name: 'long', width: 350 });
    await open.tab('Check a list');
    await open.click('Check this list');
    await open.says(/of 20,000 rows checked/);
    await open.click('Stop');
    await open.says(/Stopped after [\d,]+ rows\. Nothing was written\./);
    expect(open.errors).toEqual([]);
  });
});
