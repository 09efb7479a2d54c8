// The list of labels has every label, and no other.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { verdicts } from '../../src/core/check/verdict.js';
import { pressItems } from '../../src/core/press/item/pressItem.js';
import { groupFields, rowFields } from '../../src/core/row/headings/heading.js';
import { rowItems } from '../../src/core/row/rowItem.js';
import { costSettingRows } from '../../src/core/shop/costSettings.js';
import { settingRows } from '../../src/core/shop/settings.js';
import { stockSettingRows } from '../../src/core/shop/stockSettings.js';
import { catalog } from '../../src/functions/catalog.js';
import { places } from '../../src/taskpane/app/places.js';

const page = readFileSync(path.join(root, 'docs/labels.md'), 'utf8');
const { scripts } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
};

const sections = new Map(
  page
    .split('\n## ')
    .slice(1)
    .map((text) => {
      const rows = text.split('\n').filter((line) => line.startsWith('| '));
      const cells = rows.slice(2).map((line) => line.split('|').map((cell) => cell.trim()));
      return [
        text.split('\n')[0] ?? '',
        cells.map(([, label = '', origin = '']) => ({ label, origin })),
      ] as const;
    }),
);
const names = (rows: object) =>
  Object.values(rows as Record<string, { name: string }>).map(({ name }) => name);

describe('the list of labels', () => {
  it.each<[string, readonly string[]]>([
    ['Verdicts', verdicts],
    ['Items of a row', rowItems.map(({ heading }) => heading)],
    ['Headings of a list', [...rowFields, ...groupFields].map(({ name }) => name)],
    ['Items of a press', pressItems.map(({ name }) => name)],
    ['Settings', [...new Set([settingRows, costSettingRows, stockSettingRows].flatMap(names))]],
    ['Functions', catalog.map(({ name }) => name)],
    ['Commands', Object.keys(scripts)],
    ['Places of the pane', places.map(({ title }) => title)],
  ])('has an entry for each of: %s', (section, labels) => {
    const listed = sections.get(section)?.map(({ label }) => label) ?? [];
    expect([...listed].sort()).toEqual([...labels].sort());
  });

  it('says of each where it comes from: the trade, a standard or practice, or us', () => {
    for (const [section, rows] of sections) {
      expect([section, rows.length]).not.toEqual([section, 0]);
      for (const { label, origin } of rows)
        expect([label, origin]).toEqual([
          label,
          expect.stringMatching(/trade word|ours|practice|npm|\b(?:ISO|EN|AISC|ASTM) \d/),
        ]);
    }
  });
});
