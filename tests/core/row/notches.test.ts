// What is told of notches: sharp corners, bites, pieces too short to hold.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const check = (row: Row) =>
  checkedRow({ Grade: 'A36', Press: 'Bay A', Section: 'PL1/4X8', Length: 20, Qty: 1, ...row }, shopWith());
const notch: Row = { 'Notch width': 4, 'Notch depth': 2, 'Notch at': 'top edge 10' };
const sharp = 'the notcher leaves inside corners sharp: drill them first where they must not crack';

describe('the note of a notch', () => {
  it('says that the notcher leaves its corners sharp, and nothing of it where it is burned', () => {
    expect(check(notch)).toMatchObject({ verdict: 'OK' });
    expect(check(notch).note).toContain(sharp);
    expect(check({ ...notch, 'Cut by': 'burn' }).note).not.toContain(sharp);
    expect(check({ 'Corner clip': 1 }).note).not.toContain(sharp);
  });

  it('says how many bites it takes where it is bigger than the tool', () => {
    expect(check(notch).note).not.toContain('bite');
    const wide = check({ ...notch, 'Notch width': 5 });
    expect(wide).toMatchObject({ verdict: 'OK' });
    expect(wide.note).toMatch(/^A notch takes 2 bites on Bay A\. Understood as: /);
    expect(check({ ...notch, 'Notch width': 5, 'Notch depth': 5 }).note).toContain('takes 4 bites on Bay A.');
  });
});

describe('a piece that a shear cannot hold', () => {
  it('is said to be too short', () => {
    const short = check({ Section: 'FB 1/4x2', Length: 1 });
    expect(short).toMatchObject({ verdict: "Can't reach" });
    expect(short.note).toMatch(/^A piece 1 in long is too short to hold: Bay A needs 2 in\./);
  });
});
