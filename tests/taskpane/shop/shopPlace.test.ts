// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { pressItems } from '../../../src/core/press/item/pressItem.js';
import { settingRows } from '../../../src/core/shop/settings.js';
import { settingGroups } from '../../../src/taskpane/shop/lists/settingGroups.js';
import { foldGroups } from '../../../src/taskpane/shop/press/folds.js';
import { addShopSheet } from '../../../src/taskpane/shop/sheet/addShopSheet.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { ShownPane } from '../support/shownPane.js';
import { fillWorkbook } from '../support/workbooks.js';

let pane: ShownPane;
afterEach(() => pane.close());

async function openShop(): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, 'shop');
  pane = new ShownPane(workbook);
  await pane.click('Shop');
  return workbook;
}

const column = (workbook: MemoryWorkbook, name: string) => {
  const [headings = [], ...rows] = workbook.shown('Presses');
  const at = headings.indexOf(name);
  return Object.fromEntries(rows.map((row) => [row[0], row[at]]));
};

describe('a force in t', () => {
  it('says beside its field and on the card what it is read as', async () => {
    const workbook = new MemoryWorkbook('Sheet1');
    const { steps } = await addShopSheet(workbook, 'mm');
    await workbook.write(await workbook.plan(steps), { confirmed: true });
    pane = new ShownPane(workbook);
    await pane.click('Shop');
    await pane.click('Edit Bay A');
    await pane.click(/^Whole press:/);
    await pane.fill(/^Punch force,/, '130 t');
    await pane.says('Read as 130 tonne (1000 kgf), 1275 kN');
    await pane.click('Save 1 value');
    await pane.click('Write to sheet');
    await pane.click('All presses');
    await pane.says('130 t, read as 130 tonne (1000 kgf), 1275 kN');
  });
});

describe('the presses', () => {
  it('stand as cards with their stations, key limits, and that they are invented', async () => {
    await openShop();
    await pane.says('55 US ton');
    expect(pane.text).toContain('Punch · Flat shear · Angle shear · Bar shear');
    expect(pane.text).toContain('1-1/4 in through 9/16 in');
    expect(pane.text).toContain('Invented press: do not quote from it.');
  });

  it('the first own press is asked its name and four numbers, and goes in the place of the invented ones', async () => {
    const workbook = await openShop();
    await pane.click('New press');
    await pane.fill(/^1\. Name/, 'Bay C');
    await pane.fill('Punch force', '60');
    await pane.fill('Unit of the force', 'tonne');
    await pane.fill(/^3\. Throat/, '10');
    await pane.fill(/^Hole/, '1-1/2');
    await pane.fill(/^Through/, '5/8');
    await pane.click('Add press');
    await pane.says('This will be written');
    await pane.says('The invented presses Bay A and Bay B go.');
    await pane.click('Write to sheet');
    await pane.says('in · 1 press');
    expect(workbook.shown('Presses')[0]).toEqual(['Item', 'Unit', 'Bay C']);
    expect(column(workbook, 'Bay C')).toMatchObject({
      'Punch force': '60 tonne',
      Punch: 'yes',
      'Punch throat': '10',
      'Punch largest hole': '1-1/2',
      'Punch largest hole thickness': '5/8',
      'Flat shear': null,
    });
  });

  it('a name that begins like a formula is written as text', async () => {
    const workbook = await openShop();
    await pane.click('New press');
    await pane.fill(/^1\. Name/, '=1+1');
    await pane.click('Add press');
    await pane.click('Write to sheet');
    await pane.says('in · 1 press');
    expect(workbook.memory.cell('Shop', 5, 2).content).toBe('=1+1');
  });

  it('an answer that cannot be read is refused with its sentence, and a taken name too', async () => {
    await openShop();
    await pane.click('New press');
    await pane.fill(/^3\. Throat/, 'abc');
    await pane.says("'abc' is not a length");
    await pane.fill(/^1\. Name/, ' bay  a ');
    await pane.says('Give each press its own name.');
    await pane.click('Add press');
    expect(pane.text).not.toContain('This will be written');
  });

  it('saving writes the changed cells only, and value, no limit and not known are told apart', async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay A');
    await pane.click(/^Punch:/);
    await pane.fill('Throat, in', '6');
    await pane.fill('Stroke: value, no limit or not known', 'none');
    await pane.fill('Body, in', '');
    expect((await pane.field('Body: value, no limit or not known')).value).toBe('unknown');
    await pane.click('Save 3 values');
    await pane.says('3 cells will be overwritten');
    await pane.click('Write to sheet');
    await pane.says('Done: Change Bay A.');
    expect(column(workbook, 'Bay A')).toMatchObject({
      'Punch throat': '6',
      'Punch stroke': 'none',
      'Punch body': null,
    });
    expect(column(workbook, 'Bay A')['Punch force']).toBe('55');
  });

  it("a co-author's change is merged: fields left alone follow it, fields changed twice are asked about", async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay A');
    await pane.click(/^Punch:/);
    await pane.fill('Throat, in', '6');
    const row = (item: string) => 5 + workbook.shown('Presses').findIndex(([name]) => name === item);
    workbook.type('Shop', row('Punch throat'), 2, [['7']]);
    workbook.type('Shop', row('Punch stroke'), 2, [['2']]);
    await pane.says('Meanwhile the sheet says 7.');
    expect((await pane.field('Stroke, in')).value).toBe('2');
    expect((await pane.field('Throat, in')).value).toBe('6');
    await pane.click("Take the sheet's");
    expect((await pane.field('Throat, in')).value).toBe('7');
    await pane.button('Nothing changed');
  });

  it('a value that cannot be read holds back saving and says which', async () => {
    await openShop();
    await pane.click('Edit Bay B');
    await pane.click(/^Flat shear:/);
    await pane.fill('Rake, °', '80');
    await pane.says('Correct Flat shear rake first.');
  });
});

describe('what is typed and not yet saved', () => {
  it('is still there when another place was looked at, and the card says so', async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay A');
    await pane.click(/^Punch:/);
    await pane.fill('Throat, in', '7');
    await pane.click('Parts');
    await pane.says('Try one part');
    await pane.click('Shop');
    await pane.button('Save 1 value');
    await pane.click(/^Punch:/);
    expect((await pane.field('Throat, in')).value).toBe('7');
    await pane.click('All presses');
    await pane.says('1 value typed but not saved: Edit');
    await pane.click('Edit Bay A');
    await pane.click('Leave as on the sheet');
    await pane.button('Nothing changed');
    await pane.click('All presses');
    expect(pane.text).not.toContain('not saved');
    expect(column(workbook, 'Bay A')['Punch throat']).toBe('5');
  });

  it.each([
    ['a new press', 'New press', /^1\. Name/, 'Bay C'],
    ['a new tool', 'New tool', /^Size/, '13/16'],
    ['a setting', 'Settings', 'Shear ratio', '0.8'],
  ])('of %s is kept too', async (_, opens, field, text) => {
    await openShop();
    if (opens === 'New tool') await pane.click('Tools');
    await pane.click(opens);
    await pane.fill(field, text);
    await pane.click('Hand-off');
    await pane.says('Copies that need no add-in');
    await pane.click('Shop');
    expect((await pane.field(field)).value).toBe(text);
  });

  it('is gone after Cancel', async () => {
    await openShop();
    await pane.click('New press');
    await pane.fill(/^1\. Name/, 'Bay C');
    await pane.click('Cancel');
    await pane.click('New press');
    expect((await pane.field(/^1\. Name/)).value).toBe('');
  });
});

describe('a press as a whole', () => {
  it('is renamed in its heading, which the form follows', async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay A');
    await pane.click('Rename');
    await pane.fill('New name', 'bay b');
    await pane.says('The Presses table has a column bay b already.');
    await pane.fill('New name', 'Bay North');
    await pane.click('Rename');
    await pane.says('Rows of a list that name Bay A keep the name');
    await pane.click('Write to sheet');
    await pane.says('Done: Rename Bay A to Bay North.');
    await pane.until('the form of Bay North', () =>
      document.querySelector('form[aria-label="Press Bay North"]'),
    );
    expect(workbook.shown('Presses')[0]).toEqual(['Item', 'Unit', 'Bay North', 'Bay B']);
  });

  it('is copied with all its values under a name that is asked for', async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay B');
    await pane.click('Copy');
    await pane.says('Every value of Bay B is copied.');
    await pane.click('Add press');
    await pane.says('Give the press a name');
    await pane.fill('Name*', 'Bay C');
    await pane.click('Add press');
    await pane.click('Write to sheet');
    await pane.says('in · 3 presses');
    expect(column(workbook, 'Bay C')).toEqual(column(workbook, 'Bay B'));
  });

  it('is removed: the presses right of it move up, and it comes back in one step', async () => {
    const workbook = await openShop();
    const before = workbook.shown('Presses');
    await pane.click('Edit Bay A');
    await pane.click('Remove');
    await pane.click('Write to sheet');
    await pane.says('in · 1 press');
    expect(workbook.shown('Presses').map((row) => row.length)).toEqual(before.map(() => 3));
    expect(column(workbook, 'Bay B')['Punch throat']).toBe('12');
    expect(workbook.memory.cell('Shop', 5, 3).content).toBeNull();
    await pane.click('Undo');
    await pane.says('in · 2 presses');
    expect(workbook.shown('Presses')).toEqual(before);
  });

  it('is not removed over formulas of those right of it', async () => {
    const workbook = await openShop();
    workbook.type('Shop', 8, 3, [[{ formula: '=1+1' }]]);
    await pane.click('Edit Bay A');
    await pane.click('Remove');
    await pane.says('Columns right of it hold formulas');
  });

  it.each([
    ['12', "'12' is a number: give the press a name with a letter in it, for example Bay 12."],
    ['None', "'None' means something else in the shop's tables: choose another name."],
    ['x'.repeat(41), 'A name has at most 40 characters.'],
  ])('is not called %s', async (name, sentence) => {
    await openShop();
    await pane.click('New press');
    await pane.fill(/^1\. Name/, name);
    await pane.says(sentence);
  });
});

describe('a row of the shop that nothing reads', () => {
  it('is named, with what to do', async () => {
    const workbook = await openShop();
    const row = 5 + workbook.shown('Presses').findIndex(([name]) => name === 'Punch throat');
    workbook.type('Shop', row, 0, [['Punch throte']]);
    await pane.says('1 row is not used, because no item or setting has this name: Presses, Punch throte.');
  });
});

describe('a value with a usual one', () => {
  it('is not called unknown when blank, and the usual one is told in the unit of the shop', async () => {
    await openShop();
    await pane.click('Edit Bay A');
    await pane.click(/^Whole press:/);
    expect((await pane.field('Share of rating to use: value, no limit or usual')).value).toBe('value');
    await pane.fill('Share of rating to use', '');
    expect((await pane.field('Share of rating to use: value, no limit or usual')).value).toBe('unknown');
    expect(pane.text).toContain('Whole press: all 4 known');
    expect(pane.text).toContain('50 ksi when blank');
  });
});

describe('what only time and cost need', () => {
  it('stands in folds of its own, which say what needs it and how much of it is invented', async () => {
    const workbook = await openShop();
    await pane.click('Edit Bay A');
    await pane.says('Set-up, time and cost');
    await pane.says('Rate: not known');
    await pane.click(/^Time: 8 of 8 invented/);
    await pane.says('blank uses an invented time, which every result names');
    expect((await pane.field('Seconds to deburr: value, none or invented')).value).toBe('unknown');
    await pane.fill('Seconds to deburr, s', '6');
    await pane.says('Time: 7 of 8 invented');
    await pane.click(/^Gauges:/);
    await pane.fill('Back gauge starts the stroke', 'no');
    await pane.click(/^Angle shear:/);
    await pane.fill('On this press', 'yes');
    await pane.fill('Leg position', 'both');
    await pane.click('Save 4 values');
    await pane.click('Write to sheet');
    await pane.says('Done: Change Bay A.');
    expect(column(workbook, 'Bay A')).toMatchObject({
      'Seconds to deburr': '6',
      'Back gauge starts the stroke': 'no',
      'Angle shear leg position': 'both',
    });
  });

  it('every item of a press is asked in one fold, and only there; but whether it is invented, which is confirmed', () => {
    const asked = foldGroups.flatMap(({ folds }) => folds.flatMap(({ items }) => items));
    expect(new Set(asked).size).toBe(asked.length);
    const invented = pressItems.filter(({ key }) => key === 'invented');
    expect([...asked, ...invented]).toHaveLength(pressItems.length);
  });
});

describe('the settings', () => {
  it('are asked in groups; those of time and price open where they are wanted, and say what is invented', async () => {
    const workbook = await openShop();
    await pane.click('Settings');
    await pane.says('Time: 3 of 6 invented');
    expect(pane.text).not.toContain('Material price');
    await pane.click(/^Cost and price:/);
    await pane.says('Needed for cost and price');
    await pane.fill('Markup', '12');
    await pane.says('Cost and price: 1 value cannot be read');
    await pane.fill('Markup', '0.2');
    await pane.fill('Margin', '0.1');
    await pane.says('Markup and Margin are both given. Keep one and clear the other.');
    await pane.fill('Margin', '');
    await pane.fill('Material price', '0.85 per lb');
    await pane.says('Cost and price: 2 of 8 given');
    await pane.click('Save settings');
    await pane.click('Write to sheet');
    await pane.says('Done: Change settings.');
    const [, markup] = workbook.shown('Settings').find(([name]) => name === 'Markup') ?? [];
    expect(markup).toBe('0.2');
  });

  it('are each asked in one group, and only there', () => {
    const asked = settingGroups.flatMap(({ keys }) => keys);
    expect([...asked].sort()).toEqual(Object.keys(settingRows).sort());
  });
});

describe('a shop in millimeters', () => {
  it('has its starter presses in millimeters, and asks for them', async () => {
    const workbook = new MemoryWorkbook('Sheet1');
    const { steps } = await addShopSheet(workbook, 'mm');
    await workbook.write(await workbook.plan(steps), { confirmed: true });
    pane = new ShownPane(workbook);
    await pane.click('Shop');
    await pane.says('500 kN');
    expect(workbook.shown('Settings').find(([name]) => name === 'Edge code')?.[1]).toBe('EN');
    await pane.says('32 mm through 14 mm');
    await pane.click('New press');
    await pane.field('3. Throat, mm');
    expect((await pane.field('Unit of the force')).value).toBe('kN');
  });
});

describe('the lists of the shop', () => {
  it('a form for a new row takes the keyboard, and speaks of what was typed', async () => {
    await openShop();
    await pane.click('Tools');
    await pane.click('New tool');
    await pane.says('New tool');
    expect(document.activeElement?.textContent).toBe('New tool');
    await pane.fill('Kind', 'punch');
    await pane.fill(/^Size/, 'abc');
    await pane.says('Size: ');
    expect(pane.text).not.toContain('Tools, row 1');
  });

  it('the first tool begins the list, and the shop cell takes it', async () => {
    const workbook = await openShop();
    await pane.click('Tools');
    await pane.says('tools are not checked');
    await pane.click('New tool');
    await pane.fill('Kind', 'punch');
    await pane.fill(/^Size/, '13/16');
    await pane.click('Save');
    await pane.click('Write to sheet');
    await pane.says('any · punch · 13/16');
    expect(workbook.memory.cell('Shop', 3, 1).content).toEqual({
      formula:
        '=TONROW.SHOP(Presses[[#Headers],[#Data]],Tools[[#Headers],[#Data]],Grades[[#Headers],[#Data]],Settings[[#Headers],[#Data]])',
    });
    await pane.click('New tool');
    await pane.fill('Kind', 'die');
    await pane.fill(/^Size/, '27/32');
    await pane.click('Save');
    await pane.click('Write to sheet');
    await pane.says('any · die · 27/32');
    await pane.click('Edit any · punch · 13/16');
    await pane.fill(/^Holder/, 'S1');
    await pane.fill(/^Height/, '2-1/2');
    await pane.click('Save');
    await pane.click('Write to sheet');
    await pane.says('any · punch · 13/16 · holder S1 · 2-1/2 high');
    expect(workbook.shown('Tools')).toHaveLength(3);
  });

  it('a grade is added into the blank row, changed, refused when unreadable, and removed', async () => {
    const workbook = await openShop();
    await pane.click('Grades');
    await pane.click('New grade');
    await pane.fill('Grade', 'Heat 7714');
    await pane.fill(/^Tensile upper/, '78 lots');
    await pane.says('Heat 7714, Tensile upper');
    await pane.fill(/^Tensile upper/, '78 ksi');
    await pane.click('Save');
    await pane.click('Write to sheet');
    await pane.says('Heat 7714 · up to 78 ksi');
    expect(workbook.shown('Grades')).toHaveLength(2);
    await pane.click('Remove Heat 7714 · up to 78 ksi');
    await pane.click('Write to sheet');
    await pane.says('Done: Remove grade');
    await pane.until('no such grade', () => !pane.hasButton(/^Remove Heat 7714/));
    expect(workbook.shown('Grades')[1]?.every((cell) => cell === null)).toBe(true);
  });

  it('another unit is told to read every bare number anew', async () => {
    await openShop();
    await pane.click('Settings');
    await pane.fill('Units', 'mm');
    await pane.click('Save settings');
    await pane.says('Every number without a unit will be read in mm');
    await pane.says('Numbers are not converted.');
  });

  it('a setting is checked as it is typed, written into its cell, and changes the stamp', async () => {
    const workbook = await openShop();
    const before = workbook.memory.cell('Shop', 3, 1).value;
    await pane.click('Settings');
    await pane.fill('Shear ratio', '7');
    await pane.says('Write a number from 0.5 to 1.');
    await pane.fill('Shear ratio', '0.8');
    await pane.click('Save settings');
    await pane.click('Write to sheet');
    await pane.says('Done: Change settings.');
    expect(workbook.shown('Settings').find(([name]) => name === 'Shear ratio')?.[1]).toBe('0.8');
    expect(workbook.memory.cell('Shop', 3, 1).value).not.toBe(before);
  });
});
