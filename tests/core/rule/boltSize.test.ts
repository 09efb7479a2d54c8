import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import {
  boltRow,
  boltValue,
  isSize,
  ownDiameter,
  readBolt,
  requireSystem,
} from '../../../src/core/rule/boltSize.js';
import { refusal } from '../../support/refusal.js';

describe('readBolt: arguments', () => {
  it.each([null, '', ' '])('refuses the blank cell %j', (value) => {
    expect(refusal(() => readBolt(value, 'Bolt', 'in')).problem).toBe('the cell is blank.');
  });

  it.each([
    true,
    Number.NaN,
    'M',
    'M20-88',
    'M34',
    '0.7',
    '17/32',
    '1-1/16',
    '20x0 mm',
    '3/4-8',
    '3/4 FOO',
    'M20 5',
    '11/8',
    'big',
    'M-20',
    '3/0',
    '9'.repeat(1000),
    'M'.repeat(61),
  ])('refuses %j', (value) => {
    expect(refusal(() => readBolt(value, 'Bolt', 'in')).code).toBe('invalid');
  });

  it.each([45_721, '45721'])('refuses %j in inches: a fraction that became a date', (value) => {
    expect(refusal(() => readBolt(value, 'Bolt', 'in')).problem).toContain('turned into a date');
  });
});

describe('readBolt: limits', () => {
  it.each([
    ['1/8', 'in'],
    [4, 'in'],
    [4, 'mm'],
    ['M100', 'mm'],
  ] as const)('reads %j in a shop of %s', (value, unit) => {
    expect(readBolt(value, 'Bolt', unit).diameterMm).toBeGreaterThan(0);
  });

  it.each([
    ['7/64', 'in'],
    [20, 'in'],
    [4.1, 'in'],
    [3, 'mm'],
    [0.75, 'mm'],
    ['M102', 'mm'],
  ] as const)('refuses %j in a shop of %s', (value, unit) => {
    expect(refusal(() => readBolt(value, 'Bolt', unit)).code).toBe('invalid');
  });
});

describe('readBolt: values', () => {
  it.each<[string | number, LengthUnit, string, number]>([
    ['3/4', 'in', '3/4 in', 19.05],
    ['3/4"', 'mm', '3/4 in', 19.05],
    ['3/4', 'mm', '3/4 in', 19.05],
    ['¾', 'mm', '3/4 in', 19.05],
    ['3/4 in', 'mm', '3/4 in', 19.05],
    [0.75, 'in', '3/4 in', 19.05],
    ['1-1/8', 'in', '1-1/8 in', 28.575],
    [1, 'in', '1 in', 25.4],
    ['M20', 'in', 'M20', 20],
    ['m 20', 'in', 'M20', 20],
    ['M20 mm', 'mm', 'M20', 20],
    ['20 mm', 'in', 'M20', 20],
    [20, 'mm', 'M20', 20],
    ['20', 'mm', 'M20', 20],
  ])('reads %j in a shop of %s as %s', (value, unit, name, diameterMm) => {
    const bolt = readBolt(value, 'Bolt', unit);
    expect(bolt.name).toBe(name);
    expect(bolt.diameterMm).toBeCloseTo(diameterMm, 9);
    expect(bolt.system).toBe(name.startsWith('M') ? 'mm' : 'in');
    expect(ownDiameter(bolt)).toBeCloseTo(bolt.system === 'in' ? diameterMm / 25.4 : diameterMm, 9);
  });
});

describe('readBolt: grade and length behind the size', () => {
  it.each([
    ['3/4" A325', '3/4 in'],
    ['3/4 A325-N', '3/4 in'],
    ['3/4Ø A325', '3/4 in'],
    ['3/4 dia. bolts', '3/4 in'],
    ['3/4-10 UNC x 2-1/4 A325', '3/4 in'],
    ['3/4 x 2', '3/4 in'],
    ['7/8" x 2 1/2" Gr. 5', '7/8 in'],
    ['1-1/8 A490 SC', '1-1/8 in'],
    ['Ø3/4', '3/4 in'],
    ['M20-8.8', 'M20'],
    ['M20, HV', 'M20'],
    ['M20, 8.8', 'M20'],
    ['M20x60', 'M20'],
    ['M20x60-8.8', 'M20'],
    ['M20x2.5', 'M20'],
    ['M16 10.9 HV', 'M16'],
    ['M16 ISO 4017 - 8.8', 'M16'],
    ['M24 DIN 6914', 'M24'],
    ['M20 Gr 8.8', 'M20'],
    ['M12 Schraube', 'M12'],
    ['20 mm A325M', 'M20'],
    ['2 cm', 'M20'],
    ['dia 3/4', '3/4 in'],
    ['Dia. 3/4', '3/4 in'],
    ['dia3/4', '3/4 in'],
    ['M20 EN 14399', 'M20'],
    ['M20 EN 14399-4 HV 10.9', 'M20'],
    ['M20 EN 15048-1', 'M20'],
    ['M20 EN 14399-10 HRC', 'M20'],
    ['M20mm', 'M20'],
    ['M20x2.5x60', 'M20'],
    ['M20 x 2.5 x 120', 'M20'],
    ['3/4 x 10-1/2', '3/4 in'],
    ['3/4 x 2-3/16', '3/4 in'],
    ['3/4-10UNC', '3/4 in'],
    ['15/16 A325', '15/16 in'],
    ['M20 DIN EN ISO 4017', 'M20'],
    ['M20 DIN 933-8.8', 'M20'],
    ['M20 DIN933', 'M20'],
    ['M16 ISO 4017 DIN 933 8.8', 'M16'],
    ['3/4 A325 Type 3', '3/4 in'],
    ['3/4 A325 Type 1 Grade 5', '3/4 in'],
    ['3/4 gr.5', '3/4 in'],
    ['3/4 Grade A', '3/4 in'],
    ['M20 class 10.9', 'M20'],
    ['M20 Kl. 8.8', 'M20'],
    ['M20 FK 8.8', 'M20'],
    ['M20 (HV)', 'M20'],
    ['M20 hex.', 'M20'],
  ])('%s is %s in every shop', (text, name) => {
    for (const unit of ['in', 'mm'] as const) expect(readBolt(text, 'Bolt', unit).name).toBe(name);
  });

  it.each([
    ['4 x M20', 'Write M20 here, and 4 under Holes.'],
    ['4M20', 'Write M20 here, and 4 under Holes.'],
    ['(4) 3/4', 'Write 3/4 here, and 4 under Holes.'],
    ['(4)3/4', 'Write 3/4 here, and 4 under Holes.'],
    ['(120) M20', 'Write M20 here, and 120 under Holes.'],
    ['120 M20', 'Write M20 here, and 120 under Holes.'],
    ['4xM20', 'Write M20 here, and 4 under Holes.'],
    ['4 @ M20', 'Write M20 here, and 4 under Holes.'],
    ['4-m 20', 'Write M 20 here, and 4 under Holes.'],
  ])('%s is refused: its count belongs elsewhere', (text, allowed) => {
    expect(refusal(() => readBolt(text, 'Bolt', 'in')).allowed).toBe(allowed);
  });
});

describe('readBolt: what a refusal says', () => {
  const said = (value: string, unit: LengthUnit) => {
    const { problem, allowed } = refusal(() => readBolt(value, 'Bolt', unit));
    return `${problem} ${allowed}`;
  };

  it('names a size that no bolt has, in its own system', () => {
    expect(said('M34', 'in')).toBe('M34 is no size of a bolt. Write M20, 20 or 3/4 in.');
    expect(said('17/32', 'mm')).toBe('17/32 in is no size of a bolt. Write 3/4, 3/4" or M20.');
  });

  it.each([34, '17/32', 'M34', '34', '17/32 in'])('names the argument and what was read: %j', (value) => {
    expect(refusal(() => readBolt(value, 'Anchor', 'mm'))).toMatchObject({
      argument: 'Anchor',
      received: String(value),
    });
  });

  it.each([
    '1234 M20',
    'bolt 3/4',
    '(1234) M20',
    '4 bolts M20',
    '1 dia 1/8',
    'M20 gr',
    'M20 EN x',
    'M20 933',
    'M20 DIN 93',
    'M20 EN 14399-4.5',
  ])('takes %s for no bolt with a count', (text) => {
    expect(said(text, 'in')).toContain('is not a bolt size.');
  });

  it('reads a text of 60 characters and no longer one', () => {
    const text = `M20${' hex'.repeat(13)} bolt`;
    expect(text).toHaveLength(60);
    expect(readBolt(text, 'Bolt', 'in').name).toBe('M20');
    expect(said(`${text}s`, 'in')).toContain('is not a bolt size.');
  });
});

describe('boltValue', () => {
  it('keeps the name of a metric bolt', () => {
    expect(boltValue(readBolt('M20', 'Bolt', 'in'))).toMatchObject({
      value: 20,
      meaning: 'diameter of bolt M20',
    });
    expect(boltValue(readBolt('3/4', 'Bolt', 'in')).meaning).toBe('diameter of the bolt');
  });
});

describe('boltRow', () => {
  const rows = [{ diameter: 0.75 }, { diameter: 1 }];

  it('finds a size that differs by less than 0.02 mm and no other', () => {
    expect(boltRow(readBolt(0.7505, 'Bolt', 'in'), rows, 'Table').diameter).toBe(0.75);
    expect(isSize({ diameterMm: 0.752 * 25.4, system: 'in', name: '' }, 0.75)).toBe(false);
  });

  it('refuses a size between the rows with the sizes there are', () => {
    const failure = refusal(() => boltRow(readBolt('7/8', 'Bolt', 'in'), rows, 'Table 1', ' and above'));
    expect(failure).toMatchObject({
      code: 'unknown',
      problem: '7/8 in is not a size of Table 1.',
      allowed: 'Allowed: 3/4, 1 and above (in).',
    });
  });

  it('refuses a bolt of the other system', () => {
    const bolt = readBolt('M20', 'Bolt', 'mm');
    requireSystem(bolt, 'mm', 'Table 1');
    expect(refusal(() => requireSystem(bolt, 'in', 'Table 1')).allowed).toContain('3/4');
    expect(refusal(() => requireSystem(readBolt('1', 'Bolt', 'in'), 'mm', 'Table 1')).allowed).toContain(
      'M20',
    );
  });
});
