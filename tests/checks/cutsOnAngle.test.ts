// How deep a notch or clip may reach from the toe of an angle: as far as the leg is flat, which is its width less its
// thickness and the root radius r1 of EN 10056-1 (from memory).
import { describe, expect, it } from 'vitest';
import { checkedRow } from '../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../support/sampleShop.js';

const press = {
  ...bayAInMillimeters,
  'Notcher thickness': '30 mm',
  'Notcher width': '200 mm',
  'Notcher depth': '200 mm',
};
const shop = shopWith(press, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });

/** How a row with a notch in the toe of an angle is checked against its root. */
function cut(section: string, cells: Record<string, string | number>) {
  const row = { Section: section, Grade: 'S275', Press: 'Bay A', Length: 600, Qty: 1, ...cells };
  return checkedRow(row, shop).findings.find(({ rule }) => rule === 'cut on angle');
}

describe('cuts in the leg of an angle reach to its root at most (EN 10056-1, from memory; geometry)', () => {
  it.each([
    ['L50x50x5', 50 - 5 - 7],
    ['L80x80x8', 80 - 8 - 10],
    ['L100x100x10', 100 - 10 - 12],
    ['L150x150x15', 150 - 15 - 16],
  ])('%s: %d mm', (section, flatMm) => {
    const notch = (depthMm: number) =>
      cut(section, { 'Notch width': 40, 'Notch depth': depthMm, 'Notch at': 'toe edge 300' });
    expect(notch(flatMm)).toBeUndefined();
    expect(notch(flatMm + 0.1)).toMatchObject({ outcome: 'failed', why: 'depth', limitMm: flatMm });
    const clip = (depthMm: number) => cut(section, { 'Corner clip': `20x${depthMm}`, 'Clip at': 'toe left' });
    expect(clip(flatMm)).toBeUndefined();
    expect(clip(flatMm + 1)).toMatchObject({ outcome: 'failed', work: 'corner clip' });
  });

  it('never begin at the heel, where the other leg stands', () => {
    const heel = { 'Notch width': 40, 'Notch depth': 10, 'Notch at': 'heel edge 300' };
    expect(cut('L80x80x8', heel)).toMatchObject({ outcome: 'failed', why: 'heel' });
  });
});
