// What notes, cards and cells show can be typed again and is the same value.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtInGrades } from '../../../src/core/material/gradeTable.js';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { allNotations } from '../../../src/core/notation/allNotations.js';
import { refused } from '../../../src/core/notation/notation.js';
import { feetInchText } from '../../../src/core/quantity/feetInch.js';
import { formatQuantity } from '../../../src/core/quantity/formatQuantity.js';
import { readForce } from '../../../src/core/quantity/readForce.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { beams } from '../../../src/core/section/beam/beamTable.js';
import { channels } from '../../../src/core/section/channelTable.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import { describeHole, type Hole, nameHole } from '../../../src/core/tooling/hole.js';
import { readHole } from '../../../src/core/tooling/readHole.js';
import { readOrRefused } from './mutations.js';

const anyUnit = fc.constantFrom<LengthUnit>('in', 'mm');
const mm = (least: number, greatest: number) => fc.double({ min: least, max: greatest, noNaN: true });
/** Half the last digit that is shown: 0.001 in or a 64th within it, 0.01 mm. */
const digit: Record<LengthUnit, number> = { in: 0.0006 * 25.4, mm: 0.0051 };

describe('what is shown reads back as the same value', () => {
  it('a length with its unit, in every shop', () => {
    fc.assert(
      fc.property(mm(1, 20_000), anyUnit, anyUnit, (value, shown, shop) => {
        const text = formatQuantity({ kind: 'length', value }, shown);
        const read = readLength(text, 'Length', shop, 'distance');
        expect(Math.abs(read - value)).toBeLessThanOrEqual(digit[shown]);
      }),
      { numRuns: 2000 },
    );
  });

  it('a length in feet and inches', () => {
    fc.assert(
      fc.property(mm(5, 90_000), anyUnit, (lengthMm, shop) => {
        const read = readLength(feetInchText({ lengthMm, denominator: 64 }), 'Length', shop);
        expect(Math.abs(read - lengthMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it('a force', () => {
    fc.assert(
      fc.property(mm(1000, 40e6), anyUnit, anyUnit, (value, shown, shop) => {
        const read = readForce(formatQuantity({ kind: 'force', value }, shown), 'Force', null, shop);
        expect(Math.abs(read - value)).toBeLessThanOrEqual(shown === 'in' ? 45 : 51);
      }),
      { numRuns: 2000 },
    );
  });

  const size = mm(10, 60);
  const hole: fc.Arbitrary<Hole> = fc.oneof(
    size.map((diameterMm): Hole => ({ shape: 'round', diameterMm })),
    size.map((sideMm): Hole => ({ shape: 'square', sideMm })),
    size.map((acrossFlatsMm): Hole => ({ shape: 'hexagon', acrossFlatsMm })),
    fc
      .tuple(size, mm(1, 200))
      .map(([widthMm, more]): Hole => ({ shape: 'slot', widthMm, lengthMm: widthMm + more })),
    fc
      .tuple(size, mm(1, 100))
      .map(([widthMm, more]): Hole => ({ shape: 'rectangle', widthMm, lengthMm: widthMm + more })),
  );

  it('a hole, by itself and with its count, as a note echoes it', () => {
    fc.assert(
      fc.property(hole, anyUnit, fc.integer({ min: 1, max: 99 }), (given, unit, count) => {
        const text = describeHole(given, unit);
        const [alone, counted] = [readHole(text, 'Hole', unit), readHole(`${count} × ${text}`, 'Hole', unit)];
        expect(counted).toEqual({ hole: alone.hole, count });
        expect(alone.count).toBeUndefined();
        for (const [name, value] of Object.entries(given)) {
          const read = (alone.hole as unknown as Record<string, number | string>)[name];
          if (typeof value === 'number')
            expect(Math.abs(Number(read) - value)).toBeLessThanOrEqual(digit[unit]);
          else expect(read).toBe(value);
        }
        expect(readHole(nameHole(given, unit), 'Hole', unit).hole.shape).toBe(given.shape);
      }),
      { numRuns: 3000 },
    );
  });

  it('the name of every section of the tables and of the notations', () => {
    const shops = ['in', 'mm'] as const;
    for (const { name } of [...channels, ...beams])
      for (const shop of shops) expect(readAnySection(name, 'Section', shop).section.designation).toBe(name);
    const named = allNotations.filter(({ kind }) => kind === 'section');
    const readings = new Set(named.flatMap(({ inInches, inMm }) => [inInches, inMm]));
    for (const reading of readings) {
      const [designation = ''] = reading.split(',');
      if (designation === refused) continue;
      const again = shops.map((shop) => readOrRefused('section', designation, shop));
      expect(again, designation).toContain(designation);
    }
  });

  it('the name of every bolt and grade', () => {
    for (const text of ['1/4', '3/4', '1-1/8', 'M8', 'M20', 'M64'])
      for (const shop of ['in', 'mm'] as const) {
        const bolt = readBolt(text, 'Bolt', shop);
        expect(readBolt(bolt.name, 'Bolt', shop)).toEqual(bolt);
      }
    for (const grade of builtInGrades) expect(readGrade(grade.name, 'Grade')).toBe(grade);
  });
});
