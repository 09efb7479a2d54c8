// A text beside a part that names work which no cell gives keeps its row from OK.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const plain: Row = {
  Mark: 'F1',
  Drawing: 'D1',
  Qty: 2,
  Section: 'FB3/8X6',
  Remark: null,
  Grade: 'A36',
  Length: 12,
  Press: 'Bay A',
};
const verdict = (row: Row) => checkedRow(row, shop).verdict;
const punched: Row = { ...plain, Hole: '13/16', Holes: 2, Edge: 3, End: 3, Pitch: 6 };

describe('a text that nothing reads', () => {
  it.each([
    ...[
      'cope both ends',
      'notched',
      'drill holes',
      'w/ 2 slots',
      'BENT PLATE',
      'miter LH',
      'csk',
      'both flanges',
    ],
    ...['clip 1x1 corners', 'see dwg for holes', 'rolled to radius', 'saw cut', 'Langloch', 'PUNCHED PLATE'],
    ...['stagger holes', 'OVS', 'SSL', 'opp hand', 'mirror of S3', 'spiegelbildlich'],
    ...['VOID', 'DELETED', 'on hold', 'HOLD', 'omit', 'not required', 'by others', 'do not fab', 'Cancelled'],
  ])('keeps its row from OK: %s', (text) => {
    expect(verdict(plain)).toBe('OK');
    expect(verdict({ ...plain, Remark: text })).toBe('OK so far');
    expect(checkedRow({ ...plain, Remark: text }, shop).note).toContain(
      `Remark says '${text}', which is not checked.`,
    );
    expect(verdict({ ...plain, Mark: `F1 ${text}` })).toBe('OK so far');
    expect(verdict({ ...plain, Drawing: `D1 ${text}` })).toBe('OK so far');
  });

  it.each([
    ...[
      'CLIP ANGLE',
      'Handrail post',
      'see sketch',
      'field weld',
      'SHOP COAT',
      'GALV',
      'cut to length',
      'HOT ROLLED',
    ],
    ...[
      'Kickplate',
      'level 2',
      'Rev 3',
      'MANHOLE FRAME',
      'north side',
      'household',
      'avoid scratches',
      'A36',
    ],
  ])('changes nothing: %s', (text) => {
    expect(verdict({ ...plain, Remark: text })).toBe('OK');
  });

  it.each([
    ...[
      'NO PUNCHING',
      'NO PUNCHED HOLES',
      'DO NOT SHEAR',
      "don't punch",
      'no holes',
      'FCM',
      'sub-punch',
      'subpunch',
    ],
    ...['ream', 'do not use', 'not used'],
    ...['stainless', '304 SS', 'T304', 'AR400', '50 ksi', 'aluminum', 'corten'],
    ...[
      'circle',
      '4 in disc',
      'DISK',
      'ring',
      'half moon',
      'triangle',
      'trapezoidal',
      'round ends',
      'dogleg',
    ],
    ...['cranked', 'offset', 'dished', 'press brake', 'flanged', 'Z-shape', 'curved', 'spiral', 'flattened'],
    ...['swage ends', 'pinched', 'scallop', 'fishmouth', 'saddle', 'skewed', 'split'],
    ...[
      'vent hole',
      'weep holes',
      'hand hole',
      'HANDHOLE',
      'rat hole',
      'lifting holes',
      'jig hole',
      'extra hole',
    ],
    ...["add'l holes", 'opening', 'penetration', 'perforated', 'OS holes', 'oblong', 'elongated', 'teardrop'],
    ...['egg shaped', 'spot face', 'spotfaced', 'C/S', 'CB'],
    ...['L&R', 'LH & RH', 'left and right', 'opp', 'as shown + opp', '1 as shown 1 opp', '1R 1L'],
    ...[
      'mill to bear',
      'machine',
      'J-groove',
      'CJP',
      'chamfer all around',
      'burn to suit',
      'waterjet',
      'cold saw',
    ],
    ...['layout only', 'buyout', 'by GC', 'by others', 'existing', 'TBD', 'V.I.F.', 'VIF', 'verify in field'],
    ...['dwg governs', 'see DXF', 'dimensions in mm', 'per 2 pcs', '2 ply', 'two-ply'],
  ])('keeps a row with holes from OK, too: %s', (text) => {
    expect(verdict({ ...punched, Remark: text })).toBe('OK so far');
    expect(verdict({ ...punched, Mark: `F1 ${text}` })).toBe('OK so far');
  });

  it.each([
    ...['see GT-101', 'field bolt', 'stair 2', 'Area 3', 'shop prime', 'paint gray', '2nd floor', 'Line 4'],
    ...[
      'ship loose',
      'for railing post',
      "top of steel EL 104'-6",
      'drop from BP4',
      'rush',
      'by Friday',
      'N.T.S.',
    ],
    ...['HDG after fab', 'no paint', 'spiral stair', 'existing building', 'weld to existing', 'split level'],
    ...['machine room', 'machine bolts', 'ring beam', 'mill certs', 'mild steel', 'A36', '36 ksi'],
    ...[
      'field bolts by GC',
      'tower leg',
      'end plate',
      'hand rail',
      'discharge spout',
      'crane',
      'cost code 40',
    ],
  ])('stays OK with: %s', (text) => {
    for (const row of [plain, punched]) {
      expect(verdict({ ...row, Remark: text })).toBe('OK');
      expect(verdict({ ...row, Mark: `F1 ${text}` })).toBe('OK');
    }
  });

  it('is a hand behind a mark, unless the quantity tells hands apart', () => {
    for (const mark of ['ST1 OPP', 'ST1-OPP', 'ST1R/L', 'ST1 R/L', 'ST1L&R']) {
      expect(verdict({ ...plain, Mark: mark }), mark).toBe('OK so far');
      expect(verdict({ ...plain, Mark: mark, Qty: '1R 1L' }), mark).toBe('OK');
    }
    for (const mark of ['ST1R', 'ST1-L', 'B12/B13', 'SHOPP', 'R/L', 'CRL1'])
      expect(verdict({ ...plain, Mark: mark }), mark).toBe('OK');
  });

  it('is read below Alloy and Shape, too', () => {
    for (const [heading, cell] of [
      ['Alloy', '304'],
      ['Alloy', 304],
      ['Alloy', 6061],
      ['Alloy', '6061-T6'],
      ['Shape', 'triangle'],
      ['Bolt circle', 8],
      ['Type', 'ring'],
    ] as const)
      expect(verdict({ ...punched, [heading]: cell }), heading).toBe('OK so far');
    for (const [heading, cell] of [
      ['Alloy', 'A36'],
      ['Alloy', 'carbon'],
      ['Shape', 'plate'],
      ['Bolt circle', null],
    ] as const)
      expect(verdict({ ...punched, [heading]: cell }), heading).toBe('OK');
  });

  it('changes nothing where it only repeats what the cells give', () => {
    expect(verdict(punched)).toBe('OK');
    expect(verdict({ ...punched, Remark: 'PUNCHED PLATE' })).toBe('OK');
    expect(verdict({ ...punched, Remark: 'holes' })).toBe('OK');
    expect(verdict({ ...punched, Remark: 'holes far side' })).toBe('OK so far');
    expect(verdict({ ...punched, Remark: 'drilled' })).toBe('OK so far');
    expect(verdict({ ...punched, Remark: 'csk' })).toBe('OK so far');
  });

  it('minds a bath of zinc where steel is bent or thick, and nowhere else', () => {
    expect(verdict({ ...punched, Remark: 'HDG' })).toBe('OK');
    expect(checkedRow({ ...punched, Section: 'FB3/4X6', Remark: 'HDG' }, shop).open).toContain(
      "Remark says 'HDG'",
    );
    expect(checkedRow({ ...plain, 'Bend length': 6, Remark: 'galv' }, shop).open).toContain(
      "Remark says 'galv'",
    );
  });

  it('is read behind a mark, too', () => {
    for (const remark of ["6'-0 long", 'use A572-50', '*'])
      expect(verdict({ ...plain, Mark: `F1 ${remark}` })).toBe('OK so far');
    for (const remark of ['12" long', 'A36', 'LEVEL 2'])
      expect(verdict({ ...plain, Mark: `F1 ${remark}` })).toBe('OK');
  });

  it('counts a hand as given where the quantity tells hands apart', () => {
    expect(verdict({ ...plain, Qty: '1R 1L', Remark: 'opp hand' })).toBe('OK');
  });

  it('minds a bath of zinc that the section names', () => {
    const thick = { ...punched, Section: 'GALV FB3/4X6', Hole: '1', Edge: 3 };
    expect(checkedRow(thick, shop).open).toContain('Galvanized steel');
    expect(checkedRow({ ...thick, Section: 'FB3/4X6' }, shop).open).not.toContain('Galvanized steel');
  });

  it('is never better for a text than without', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 30, unit: fc.constantFrom(...'ABcdx 0123468/-"\'*†ø.') }),
        (text) => {
          expect(['OK', 'OK so far']).toContain(verdict({ ...punched, Remark: text }));
          expect(verdict({ ...punched, Pitch: 1, Remark: text })).toBe('Holes too close');
        },
      ),
    );
  });

  it('is a name where it is a mark of one word', () => {
    fc.assert(
      fc.property(fc.constantFrom('HOLE1', 'CLIP-2', 'NOTCH4', 'BEND/A', 'DRILL'), (mark) => {
        expect(verdict({ ...plain, Mark: mark })).toBe('OK');
      }),
    );
  });
});
