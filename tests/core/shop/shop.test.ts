import { describe, expect, it } from 'vitest';
import { findPress } from '../../../src/core/shop/findPress.js';
import { gradeOfShop } from '../../../src/core/shop/gradeOfShop.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { setting } from '../../../src/core/shop/setting.js';
import { readStamp, rulesEdition, stampText } from '../../../src/core/shop/stamp.js';
import { pressTable, settingTable, shopTables } from '../../support/sampleShop.js';
import { refusal, refusalText } from '../../support/refusal.js';

const hash = '7K7Q-29MX-DT4P';

describe('the stamp', () => {
  it('says what there is, in one line', () => {
    const whole = { unit: 'in', pressCount: 3, incomplete: [], unreadable: 0, unknownRows: 0, hash } as const;
    expect(stampText(whole)).toBe(`in · 3 presses · rules ${rulesEdition} · ${hash}`);
    expect(stampText({ ...whole, pressCount: 1, incomplete: ['Bay C'], unknownRows: 2 })).toBe(
      `in · 1 press · Bay C incomplete · 2 rows not used · rules ${rulesEdition} · ${hash}`,
    );
    expect(stampText({ ...whole, unknownRows: 1 })).toContain('1 row not used');
    expect(stampText({ ...whole, unreadable: 1 })).toContain(' · 1 entry unreadable · ');
    expect(stampText({ ...whole, unreadable: 2 })).toContain(' · 2 entries unreadable · ');
  });

  it('is read back by its end, whatever stands before', () => {
    expect(readStamp(`in · 3 presses · rules 1 · ${hash}`)).toEqual({ hash, edition: 1 });
    expect(readStamp(` mm · rules 12 · ${hash} `)).toEqual({ hash, edition: 12 });
  });

  it.each([
    '',
    'in',
    hash,
    `rules 1 · ${hash.toLowerCase()}`,
    `rules 1 · ${hash}.`,
    'rules 1 · 0K7Q-29MX-DT4P',
  ])('is not %j', (text) => {
    expect(readStamp(text)).toBeUndefined();
  });
});

describe('findPress', () => {
  const shop = readShop(shopTables());

  it('finds a press without regard to case and spaces', () => {
    expect(findPress('  BAY a ', 'Press', shop).name).toBe('Bay A');
  });

  it('says which presses there are', () => {
    expect(refusal(() => findPress('Bay Z', 'Press', shop))).toMatchObject({
      code: 'unknown',
      received: 'Bay Z',
    });
    expect(refusalText(() => findPress('Bay Z', 'Press', shop))).toBe(
      "Press: 'Bay Z' is not a press of the shop. Presses: Bay A, Bay B.",
    );
    const none = readShop({ presses: [['Item', 'Unit']] });
    expect(refusalText(() => findPress('Bay A', 'Press', none))).toContain('Presses: none.');
  });

  it('refuses a name that two presses have', () => {
    const twins = readShop({
      presses: [
        ['Item', 'Unit', 'Bay A', 'bay a'],
        ['Punch', '', 'yes', 'no'],
      ],
    });
    expect(refusalText(() => findPress('Bay A', 'Press', twins))).toMatch(
      /^Press: Presses: 2 presses are called Bay A\./,
    );
  });
});

describe('gradeOfShop', () => {
  const grades = [
    ['Grade', 'Tensile upper', 'Shear'],
    ['A36', '70 ksi', null],
    ['Plate', 'strong', null],
  ];
  const shop = readShop(shopTables({ grades }));

  it("takes the shop's own grade before the built-in one of the same name", () => {
    expect(gradeOfShop('a36', 'Grade', shop).source).toContain("the shop's Grades table");
    expect(gradeOfShop('A572-50', 'Grade', shop).source).toContain('ASTM');
  });

  it('refuses a grade of the shop that cannot be read, with the reason, and never another in its place', () => {
    expect(refusalText(() => gradeOfShop('PLATE', 'Grade', shop))).toMatch(
      /^Grades, Plate, Tensile upper: 'strong' is not a strength\./,
    );
  });
});

describe('setting', () => {
  const shop = readShop(shopTables({ settings: settingTable({ 'Shear ratio': 'high', 'Edge code': 'EN' }) }));

  it('is the usual one without a shop, and the one of the shop with it', () => {
    expect(setting(undefined, 'edgeCode')).toBe('AISC');
    expect(setting(shop, 'edgeCode')).toBe('EN');
  });

  it('refuses with the reason where its cell cannot be read', () => {
    expect(refusalText(() => setting(shop, 'shearRatio'))).toBe(
      "Settings, Shear ratio: 'high' is not a number. Write a number from 0.5 to 1.",
    );
  });
});

describe('readShop', () => {
  it('lists the presses with a cell that cannot be read, and rows that nothing reads', () => {
    const presses = pressTable({ 'Bay A': { Punch: 'maybe' }, 'Bay B': { Punch: 'yes', Color: 'blue' } });
    const shop = readShop({ presses, settings: settingTable({ Weather: 'fine' }) });
    expect(shop.incomplete).toEqual(['Bay A']);
    expect(shop.unknownRows).toEqual(['Presses, Color', 'Settings, Weather']);
  });

  it('gives one stamp whatever the spelling of a tool', () => {
    const stampOf = (size: string | number) =>
      readShop(
        shopTables({
          tools: [
            ['Press', 'Kind', 'Size'],
            ['any', 'die', size],
          ],
        }),
      ).stamp;
    expect(stampOf('13/16')).toBe(stampOf(0.8125));
    expect(stampOf('13/16')).not.toBe(stampOf('7/8'));
  });

  it('counts the body of a tool in the stamp, and not the order of the tools', () => {
    const stampOf = (...bodies: (string | null)[]) => {
      const tools = bodies.map((body, at) => ['any', 'punch', 0.5 + at / 16, body]);
      const table = (rows: typeof tools) =>
        readShop(shopTables({ tools: [['Press', 'Kind', 'Size', 'Body'], ...rows] })).stamp;
      const stamp = table(tools);
      expect(table([...tools].reverse())).toBe(stamp);
      return stamp;
    };
    const stamps = [stampOf('1-3/8', null), stampOf('1-1/2', null), stampOf('28XX', '28XX')];
    expect(new Set(stamps).size).toBe(3);
    expect(stampOf('1-3/8', null)).toBe(stampOf('1.375', null));
  });

  it('offers only the grades that can be used', () => {
    const grades = [
      ['Grade', 'Shear'],
      ['Good', '50 ksi'],
      ['Bad', 'abc'],
    ];
    expect(readShop(shopTables({ grades })).grades.map(({ name }) => name)).toEqual(['Good']);
  });
});
