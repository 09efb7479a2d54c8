import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { pressItems } from '../../../src/core/press/item/pressItem.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { jobSpecs } from '../../../src/core/rule/jobSpec.js';
import { defaultSettings, readSettings, settingRows } from '../../../src/core/shop/settings.js';

const read = (name: string, cell: CellValue) =>
  readSettings([
    ['Setting', 'Value'],
    [name, cell],
  ]);
const reference = readFileSync(path.join(import.meta.dirname, '../../../docs/shop-sheet.md'), 'utf8');
const rowsOf = (name: string) => reference.split('\n').filter((line) => line.split('|')[1]?.trim() === name);

describe('Settings of forces, holes and bends', () => {
  it.each([
    ['Stripping share', 'strippingShare', [0.05, 0.5], [0.049, 0.51]],
    ['V opening ratio', 'veeRatio', [4, 20], [3.9, 21]],
  ] as const)('%s is read from its least to its greatest value and no further', (name, key, good, bad) => {
    for (const value of good) expect(read(name, value).settings[key]).toBe(value);
    for (const value of bad) expect(read(name, value).bad[key]?.problem).toContain('out of range');
  });

  it('Hole fit and Job spec are read without regard to case', () => {
    expect(read('hole fit', 'Short Slot').settings.holeFit).toBe('short slot');
    for (const spec of jobSpecs) expect(read('job spec', spec.toUpperCase()).settings.jobSpec).toBe(spec);
    expect(read('Hole fit', 'anchor rod').bad.holeFit?.allowed).toContain('Write standard');
    expect(read('Job spec', 'EXC2').bad.jobSpec?.allowed).toContain('EN 1090-2 EXC2');
  });

  it.each([
    ['Holes without pitch', 'holesWithoutPitch', ['ask', 'even']],
    ['Bar stock to width', 'barStockToWidth', ['ask', 'from bar', 'from sheet']],
  ] as const)('%s takes its choices and no other, and asks where nothing is said', (name, key, choices) => {
    for (const choice of choices) expect(read(name, choice.toUpperCase()).settings[key]).toBe(choice);
    expect(read(name, 'yes').bad[key]?.allowed).toContain(`Write ${choices.join(', ')}.`);
    expect(defaultSettings[key]).toBe('ask');
  });

  it('a blank leaves the default', () => {
    for (const { name } of Object.values(settingRows))
      expect(read(name, null).settings).toEqual(defaultSettings);
  });
});

describe('The reference of the shop tables', () => {
  it.each(pressItems.map(({ name, meaning }) => [name, meaning]))('has the press row %s', (name, meaning) => {
    const rows = rowsOf(name);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toContain(meaning);
  });

  it.each(Object.values(settingRows).map(({ name }) => name))('has the setting %s', (name) => {
    expect(rowsOf(name)).toHaveLength(1);
  });
});
