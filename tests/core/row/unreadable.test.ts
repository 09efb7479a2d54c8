// Rows with several cells that cannot be read: all are told at once, in the order of the columns.
import { describe, expect, it } from 'vitest';
import { checkedRow, governsEach, type Row } from '../../support/checkedRow.js';
import { settingTable, shopWith } from '../../support/sampleShop.js';

function checked(row: Row, settings: Row = {}) {
  return checkedRow(row, shopWith({}, { settings: settingTable(settings) }));
}

/** What the findings are about whose word is Check input, in their order. */
function unreadable(row: Row, settings: Row = {}): string[] {
  const { findings } = checked(row, settings);
  return governsEach(
    findings.filter(({ verdict }) => verdict === 'Check input'),
    shopWith(),
  );
}

const good: Row = {
  Mark: 'C1',
  Qty: 4,
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: '1-1/2',
  End: '1-1/2',
  Pitch: 3,
  Press: 'Bay A',
};

describe('a row with several cells that cannot be read', () => {
  it('is OK when all can', () => {
    expect(checked(good).verdict).toBe('OK');
  });

  it('tells an unreadable hole, a bolt of no table and both distances at once, each in a sentence', () => {
    const bad = checked({ ...good, Hole: 'abc', Bolt: '9/16', Edge: -1, End: 'y' });
    expect(bad.verdict).toBe('Check input');
    expect(bad.governs).toBe('Hole');
    const sentences = [
      "Hole: 'abc' is not a hole. Write 13/16, 13/16x1-7/8 (slot), sq 3/4, rect 1x2, hex 7/8 or 4 @ 13/16 (four holes).",
      'Bolt: 9/16 in is not a size of AISC 360-22 Table J3.3.',
      'Allowed: 1/2, 5/8, 3/4, 7/8, 1, 1-1/8 and above (in).',
      'Edge: -1 is not above zero. Allowed: 1/64 to 800 in.',
      "End: 'y' is not a length. Write 3/8, 9.5 mm or 0.375.",
    ];
    expect(bad.note).toBe(sentences.join(' '));
  });

  it('tells them in the order of the columns, whatever that is', () => {
    const row = { End: 'x', Bolt: '9/16', Edge: -1, Section: 'FB 3/8x4', Grade: 'A36', Hole: 'abc' };
    expect(unreadable(row)).toEqual(['End', 'Bolt', 'Edge', 'Hole']);
    expect(unreadable({ ...row, Hole: '13/16' })).toEqual(['End', 'Bolt', 'Edge']);
  });

  it('tells every column of the row', () => {
    const all = Object.fromEntries(Object.keys(good).map((heading) => [heading, '?']));
    const told = ['Qty', 'Section', 'Grade', 'Length', 'Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Pitch'];
    expect(unreadable(all)).toEqual(told);
  });

  it('tells a leg the section does not have beside a grade that is unknown, and only once', () => {
    const angle = { Section: 'L3X3X1/4', Grade: 'A3x6', Hole: '13/16', Leg: 'top', Gage: 'x' };
    expect(unreadable(angle)).toEqual(['Grade', 'Leg', 'Gage']);
    expect(unreadable({ ...angle, Grade: 'A36' })).toEqual(['Leg', 'Gage']);
    expect(unreadable({ ...angle, Grade: 'A36', Section: 'C8X11.5', Gage: 1 })).toEqual(['Leg']);
  });

  it('tells the cells of a group whose hole stands only as a count', () => {
    expect(unreadable({ ...good, Hole: null, Bolt: null, Edge: 'x' })).toEqual(['Hole', 'Edge']);
  });

  it('refuses distances of a group without a hole size', () => {
    expect(unreadable({ ...good, Hole: null, Bolt: null, Holes: null, Edge: 'x' })).toEqual(['Hole']);
  });

  it('does not call a cell blank that cannot be read', () => {
    const work = { Section: 'FB 3/8x4', Grade: 'A36', Length: 12 };
    const notch = { ...work, 'Notch width': 'x', 'Notch depth': 1, Notches: 2 };
    expect(unreadable(notch)).toEqual(['Notch width']);
    expect(unreadable({ ...notch, 'Notch depth': null })).toEqual(['Notch width', 'Notch depth']);
    expect(unreadable({ ...work, 'Corner clip': 'x', Corners: 'y' })).toEqual(['Corner clip', 'Corners']);
    expect(unreadable({ ...work, 'Corner clip': 'x', Corners: 2 })).toEqual(['Corner clip']);
    expect(unreadable({ ...work, 'Bend length': 'x', Bends: 2 })).toEqual(['Bend length']);
  });

  it('does not look up the bolt of a hole in a solid bar: it is drilled', () => {
    const bar = { Section: 'RB 1', Grade: 'A36', Length: 12, Hole: '13/16', Bolt: '9/16', Press: 'Bay A' };
    expect(checked(bar)).toMatchObject({ verdict: 'OK so far', route: 'shear, drill', hits: 0 });
    expect(checked(bar).note).toContain('Hole: drilled; no press station punches holes in RB1');
  });
});

describe('what a cell of a row is told', () => {
  it('is not to add the shop cell, which only a call can', () => {
    const { note } = checked({ ...good, Hole: 22 });
    expect(note).toContain('Hole: 22 would be 22 inches. Allowed: 1/16 to 12 in. Write "22 mm".');
    expect(note).not.toContain('shop cell');
  });

  it.each(['AISC', 'AISC 360-22', 'CSA', 'AS'])('is to set the edge code where %s lacks the bolt', (code) => {
    const row = { ...good, Hole: '14 mm', Bolt: 'M12', Edge: 2, End: 2 };
    const { verdict, note } = checked(row, { 'Edge code': code });
    expect(verdict).toBe('Check input');
    expect(note).toMatch(
      /^Bolt: M12 is not a size of AISC 360-22 Table J3\.3M\. Allowed: M16, [^.]* and above, or set Edge code to EN on the Shop sheet\. /,
    );
    expect(checked(row, { 'Edge code': 'EN' }).verdict).toBe('OK');
  });

  it('names marks of the section that change nothing', () => {
    const { verdict, note } = checked({ ...good, Section: 'L4X4X3/8 LLV', Edge: null, Gage: 2 });
    expect(verdict).not.toBe('Check input');
    expect(note).toContain('LLV of the section changes nothing here');
  });
});
