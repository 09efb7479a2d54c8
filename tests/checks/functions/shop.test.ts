import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { contentHash } from '../../../src/core/shop/hash.js';
import { expectPrinted } from '../../support/printed.js';
import { bayA, bayB, pressTable, settingTable, shopTables } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';

/** Twelve characters for the first sixty bits of the hash, by another implementation of both. */
function stampCharacters(text: string): string {
  const bits = [...createHash('sha256').update(text, 'utf8').digest()]
    .map((byte) => byte.toString(2).padStart(8, '0'))
    .join('');
  const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
  const characters = Array.from(
    { length: 12 },
    (_, at) => letters[parseInt(bits.slice(5 * at, 5 * at + 5), 2)],
  );
  return characters.join('').replace(/(.{4})(?!$)/g, '$1-');
}

const stampOf = (...tables: (CellValue[][] | null)[]) => new SheetRuntime().call('SHOP', ...tables) as string;
const { presses } = shopTables() as { presses: CellValue[][] };

describe('SHOP', () => {
  it('FIPS 180-4, appendix example "abc": the hash begins ba7816bf 8f01cfea (from memory)', () => {
    const sixtyBits = BigInt('0xba7816bf8f01cfea') >> 4n;
    const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
    const characters = Array.from(
      { length: 12 },
      (_, at) => letters[Number((sixtyBits >> BigInt(55 - 5 * at)) & 31n)],
    );
    expect(contentHash('abc').replaceAll('-', '')).toBe(characters.join(''));
  });

  it.each(['', 'abc', 'Bay Ø 1/2″', 'x'.repeat(10_000)])(
    "the hash agrees with Node's own SHA-256",
    (text) => {
      expect(contentHash(text)).toBe(stampCharacters(text));
    },
  );

  it('says units, presses, the edition of the rules and the hash', () => {
    expect(stampOf(presses)).toMatch(
      /^in · 2 presses · rules 1 · (?:[A-HJ-NP-Z2-9]{4}-){2}[A-HJ-NP-Z2-9]{4}$/,
    );
    const metric = settingTable({ Units: 'mm' });
    const one = pressTable({ 'Bay A': { Punch: 'yes' } });
    expect(stampOf(one, null, null, metric)).toMatch(/^mm · 1 press · rules 1 · /);
  });

  it('names a press with a cell that cannot be read, and still gives a stamp', () => {
    const half = pressTable({ 'Bay A': bayA, 'Bay C': { ...bayB, 'Punch throat': 'abc' } });
    expect(stampOf(half)).toMatch(/^in · 2 presses · Bay C incomplete · rules 1 · /);
  });

  it('is the same for the same content: order of rows, spelling of sizes, spaces, blank rows, a missing row for a blank cell', () => {
    const [headings = [], ...rows] = presses;
    const respelt = rows.map((row) =>
      row.map((cell) => (cell === '1-1/2' ? '1 1/2"' : cell === 'Punch throat' ? '  punch THROAT ' : cell)),
    );
    const same = stampOf(presses);
    expect(stampOf([headings, ...[...rows].reverse()])).toBe(same);
    expect(stampOf([headings, ...respelt])).toBe(same);
    expect(stampOf([headings, ...rows, ['', null, '', '']])).toBe(same);
    expect(stampOf([headings, ...rows, ['Punch body', 'in', null, '']])).toBe(same);
  });

  it('changes with every value of every table', () => {
    const stamps = [stampOf(presses)];
    presses.forEach((row, at) => {
      if (at === 0) return;
      const changed = presses.map((each, index) => (index === at ? [row[0], row[1], null, row[3]] : each));
      stamps.push(stampOf(changed as CellValue[][]));
    });
    const tools = [
      ['Press', 'Kind', 'Size'],
      ['any', 'punch', '13/16'],
    ];
    const grades = [
      ['Grade', 'Shear'],
      ['Plate', '50 ksi'],
    ];
    stamps.push(stampOf(presses, tools));
    stamps.push(stampOf(presses, [...tools, ['any', 'die', '27/32']]));
    stamps.push(stampOf(presses, null, grades));
    stamps.push(stampOf(presses, null, null, settingTable({ 'Shear ratio': 0.7 })));
    expect(new Set(stamps).size).toBe(stamps.length);
  });
});

describe('PRESSVALUE', () => {
  const runtime = new SheetRuntime();
  const shop = (cells: Record<string, CellValue>, settings: Record<string, CellValue> = {}) =>
    runtime.call('SHOP', pressTable({ 'Bay A': cells }), null, null, settingTable(settings)) as string;

  it('NIST SP 811: a US ton-force is 8.896443 kN, a tonne-force 9.80665 kN (from memory)', () => {
    const stamp = shop({ 'Punch force': '1 US ton', 'Shear force': '1 tonne' }, { Units: 'mm' });
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Punch force', stamp), '8.896443');
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Shear force', stamp), '9.80665');
    // 65 t × 9.80665 / 8.896443 = 71.650 US tons
    const inches = shop({ 'Punch force': '65 tonne' });
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Punch force', inches), '71.650');
  });

  it('gives every value in the units of the shop, as the table states it', () => {
    const inches = shop(bayA);
    for (const item of [
      'Punch force',
      'Punch throat',
      'Reference shear strength',
      'Flat shear rake',
      'Heaviest bar',
    ]) {
      expect(runtime.call('PRESSVALUE', 'Bay A', item, inches), item).toBe(bayA[item]);
    }
    // 50 ksi × 6.894757 MPa (NIST SP 811, from memory); 12 in × 25.4; 600 lb × 0.4535924
    const metric = shop({ ...bayA, 'Punch throat': '12 in' }, { Units: 'mm' });
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Reference shear strength', metric), '344.738');
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Punch throat', metric), '304.8000');
    expectPrinted(runtime.number('PRESSVALUE', 'Bay A', 'Heaviest bar', metric), '272.155');
  });

  it('says yes, no, none and unknown in words', () => {
    const stamp = shop({ Punch: 'yes', Bend: 'no', 'Punch stroke': 'none', 'Punch throat': null });
    const say = (item: string) => runtime.call('PRESSVALUE', 'Bay A', item, stamp);
    expect(['Punch', 'Bend', 'Punch stroke', 'Punch throat'].map(say)).toEqual([
      'yes',
      'no',
      'none',
      'unknown',
    ]);
  });

  it('refuses a bare ton, which is three units, with all three', () => {
    const stamp = shop({ 'Punch force': '60 ton' });
    const { message } = runtime.error('PRESSVALUE', 'Bay A', 'Punch force', stamp);
    expect(message).toContain('"ton" is three different units');
    expect(message).toMatch(/US ton \(2000 lbf\), tonne \(1000 kgf\) or kN/);
  });
});
