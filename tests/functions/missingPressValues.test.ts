// What a function of one press says where a value of the press that it needs is blank: the name of that value.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { type PressCells, shopWith } from '../support/sampleShop.js';
import { SheetRuntime } from '../support/sheetRuntime.js';

const tools: CellValue[][] = [
  ['Press', 'Kind', 'Size', 'Body', 'Height'],
  ['any', 'punch', '13/16', '1-3/8', '4-1/2'],
  ['any', 'die', '27/32', null, null],
];
const list = [
  ['Mark', 'Section', 'Grade', 'Length', 'Hole', 'Holes', 'Edge', 'End'],
  ['A', 'FB 3/8x6', 'A36', 24, '13/16', 1, 3, 4],
];
/** Everything that the calls below need. */
const whole: PressCells = {
  'Punch body': 2,
  'Punch open height': 6,
  'Notcher stroke': 2,
  'Shear stroke': 2,
  'Approach speed': 2,
  'Press speed': 1,
  'Return speed': 3,
};
const rate: PressCells = {
  ...{ 'Approach speed': null, 'Press speed': null, 'Return speed': null },
  ...{ 'Strokes per minute': 24, 'Strokes per minute travel': 2 },
};

type Call = [name: string, inputs: (string | number | (string | number)[][])[], option?: string];
const pick: Call = ['TOOLPICK', ['Bay A', '13/16', '3/8', 'A36']];
const order: Call = ['TOOLORDER', [list, 'Bay A']];
const limits = (operation: string, option = ''): Call => [
  'STROKELIMITS',
  ['Bay A', operation, '3/8'],
  option,
];
const time = (operation: string): Call => ['STROKETIME', ['Bay A', operation, '3/8']];

function shown([name, inputs, option]: Call, cells: PressCells): string {
  const shop = shopWith({ ...whole, ...cells }, { tools });
  return JSON.stringify(new SheetRuntime(shop).call(name, ...inputs, shop.stamp, option ?? null));
}

const lacks = /blank, so|not given/;

describe('a press value that a call needs', () => {
  it.each<[Call, string, PressCells?]>([
    [pick, 'Punch'],
    [pick, 'Punch body'],
    [order, 'Punch'],
    [order, 'Punch body'],
    [limits('punch'), 'Punch'],
    [limits('punch'), 'Punch stroke'],
    [limits('punch', '13/16'), 'Punch open height'],
    [limits('notch'), 'Notcher'],
    [limits('notch'), 'Notcher stroke'],
    [limits('flat shear'), 'Flat shear'],
    [limits('flat shear'), 'Shear stroke'],
    [limits('angle shear'), 'Angle shear'],
    [limits('angle shear'), 'Shear stroke'],
    [limits('bar shear'), 'Bar shear'],
    [limits('bar shear'), 'Shear stroke'],
    [limits('bend'), 'Bend'],
    [time('punch'), 'Punch'],
    [time('punch'), 'Approach speed'],
    [time('punch'), 'Press speed'],
    [time('punch'), 'Return speed'],
    [time('punch'), 'Strokes per minute', rate],
    [time('punch'), 'Strokes per minute travel', rate],
    [time('notch'), 'Notcher'],
    [time('flat shear'), 'Flat shear'],
    [time('flat shear'), 'Shear stroke'],
    [time('angle shear'), 'Angle shear'],
    [time('bar shear'), 'Bar shear'],
    [time('bar shear'), 'Shear stroke', rate],
    [time('bend'), 'Bend'],
  ])('of %j is named where %s is blank', (call, item, cells = {}) => {
    expect(shown(call, cells)).not.toMatch(lacks);
    const without = shown(call, { ...cells, [item]: null });
    expect(without).toContain(`${item} of Bay A`);
    expect(without).toMatch(lacks);
  });
});
