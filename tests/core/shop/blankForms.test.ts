import { describe, expect, it } from 'vitest';
import { pressItems } from '../../../src/core/press/item/pressItem.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { settingRows } from '../../../src/core/shop/settings.js';
import type { Cells } from '../../../src/core/shop/table.js';

const blanks: CellValue[] = [null, '', ' ', 0, -0];
const presses: Cells = [
  ['Item', 'Unit', 'Bay A', 'Bay B'],
  ['Punch force', 'US ton', 55, 88],
];
const tools: Cells = [
  ['Press', 'Kind', 'Shape', 'Size', 'Length', 'Count', 'Note'],
  ['Bay A', 'punch', 'round', '13/16', null, 2, 'worn'],
];
const grades: Cells = [
  ['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'],
  ['Bay plate', '60 ksi', '75 ksi', '50 ksi', 490, 'mill'],
];
const settings: Cells = [
  ['Setting', 'Value'],
  ['Units', 'in'],
];

/** What is said of a shop for each form of a blank. */
function stamps(tables: (blank: CellValue) => Parameters<typeof readShop>[0]): string[] {
  return [...new Set(blanks.map((blank) => readShop(tables(blank)).stamp))];
}

/** A table with one cell of its first data row blank. */
function without(table: Cells, column: string, blank: CellValue): Cells {
  const [headings = [], row = [], ...rest] = table;
  return [headings, row.map((cell, at) => (headings[at] === column ? blank : cell)), ...rest];
}

describe('a blank cell of the shop', () => {
  it.each(pressItems.map(({ name }) => name))(
    'as %s of a press gives the same stamp in every form',
    (name) => {
      const of = (blank: CellValue) => ({ presses: [...presses.slice(0, 1), [name, blank, blank, blank]] });
      expect(stamps(of)).toEqual([readShop({ presses: presses.slice(0, 1) }).stamp]);
    },
  );

  it.each(['Press', 'Kind', 'Shape', 'Size', 'Length', 'Count', 'Note'])(
    'as %s of a tool gives the same stamp in every form',
    (column) => {
      expect(stamps((blank) => ({ presses, tools: without(tools, column, blank) }))).toHaveLength(1);
    },
  );

  it.each(['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'])(
    'as %s of a grade gives the same stamp in every form',
    (column) => {
      expect(stamps((blank) => ({ presses, grades: without(grades, column, blank) }))).toHaveLength(1);
    },
  );

  it.each(Object.values(settingRows).map(({ name }) => name))(
    'as the setting %s gives the stamp of a shop without that row',
    (name) => {
      const of = (blank: CellValue) => ({ presses, settings: [...settings, [name, blank]] });
      expect(stamps(of)).toEqual([readShop({ presses, settings }).stamp]);
    },
  );

  it('as a whole row, column or heading changes nothing', () => {
    const plain = readShop({ presses, tools, grades, settings }).stamp;
    const wider = (table: Cells, blank: CellValue): Cells => [
      ...table.map((row) => [...row, blank]),
      Array.from({ length: (table[0]?.length ?? 0) + 1 }, () => blank),
    ];
    const of = (blank: CellValue) => ({
      presses: wider(presses, blank),
      tools: wider(tools, blank),
      grades: wider(grades, blank),
      settings: wider(settings, blank),
    });
    expect(stamps(of)).toEqual([plain]);
  });
});

describe('a tool', () => {
  it('is one where its count is blank, and none where it says none', () => {
    const count = (cell: CellValue) =>
      readShop({ presses, tools: [tools[0] ?? [], ['any', 'punch', 'round', '13/16', null, cell, '']] }).tools
        ?.tools[0]?.count;
    expect(blanks.map(count)).toEqual(blanks.map(() => 1));
    expect(['none', ' None '].map(count)).toEqual([0, 0]);
  });
});
