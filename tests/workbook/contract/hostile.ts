import { describe, expect, it } from 'vitest';
import { areaAt, type Open } from './underTest.js';

const hostile = [
  '=1+1',
  "=cmd|' /C calc'!A0",
  '+1+1',
  '-2',
  '-A1',
  '@SUM(A1)',
  '\t=1+1',
  "'=1+1",
  "''",
  '3/8',
  '1-3',
  '1 3/8',
  '0012',
  '1e3',
  '50%',
  'TRUE',
  '#N/A',
  '<img src=x onerror=alert(1)>',
  '\u202Eright to left',
  'זווית 50',
  'two\nlines',
  ' spaces ',
  '{"json":1}',
  'x'.repeat(32_000),
];

export function hostileContract(open: Open): void {
  describe('text from anywhere', () => {
    it.each(hostile)('stays the text it is: %j', async (text) => {
      const { workbook, hands } = await open();
      await hands.format(areaAt('A1', 1, 1), '0.00');
      await workbook.write(
        await workbook.plan([
          { kind: 'cells', area: areaAt('A1', 1, 1), contents: [[text]] },
          { kind: 'cells', area: areaAt('B1', 1, 1), contents: [[text]], formats: [['@']] },
        ]),
      );
      for (const column of [0, 1]) {
        expect(hands.look('Parts', 0, column).value).toBe(text);
        expect(hands.look('Parts', 0, column)).not.toHaveProperty('formula');
      }
      const [read] = await workbook.read([areaAt('A1', 1, 2)], ['values', 'formulas']);
      expect(read?.values).toEqual([[text, text]]);
      expect(read?.formulas).toEqual([[null, null]]);
    });

    it.each(['=Bay', '+Bay', '-Bay', '@Bay', "'Bay", '=1+1', '1e3', 'Bay "A"', "O'Bay", '[Bay]', '#Bay'])(
      'can name a press, a heading and a column: %j',
      async (name) => {
        const { workbook, hands } = await open();
        await workbook.write(
          await workbook.plan([
            { kind: 'cells', area: areaAt('A1', 1, 2), contents: [['Item', name]] },
            { kind: 'table', name: 'Presses', area: areaAt('A1', 2, 2) },
          ]),
        );
        const plan = await workbook.plan([
          { kind: 'column', table: 'Presses', rightOf: name, heading: `${name} 2`, contents: [name] },
        ]);
        const revert = await workbook.write(plan);
        expect((await workbook.tables())[0]?.headings).toEqual(['Item', name, `${name} 2`]);
        expect(hands.look('Parts', 0, 1)).toEqual({ value: name, format: 'General' });
        expect(hands.look('Parts', 1, 2)).toEqual({ value: name, format: 'General' });
        await revert.run();
        expect((await workbook.tables())[0]?.headings).toEqual(['Item', name]);
      },
    );

    it.each(["It's", 'a!b', 'A1', '=1', 'Übersicht, 2', '$B$2', "a'b!c"])(
      'can name a sheet: %j',
      async (name) => {
        const { workbook } = await open();
        const area = areaAt('B2', 1, 1, name);
        await workbook.write(
          await workbook.plan([
            { kind: 'sheet', name },
            { kind: 'cells', area, contents: [['here']] },
            { kind: 'name', name: 'Here', area },
          ]),
        );
        const [read, used] = await workbook.read([{ name: 'Here' }, { usedOf: name }], ['values']);
        expect(read).toEqual({ area, values: [['here']] });
        expect(used).toEqual({ area, values: [['here']] });
        await workbook.goTo(area);
        expect(await workbook.selection()).toEqual([area]);
      },
    );
  });
}
