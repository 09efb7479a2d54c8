// The cells that hold one word of a few.
import { describe, expect, it } from 'vitest';
import { readEdgeKind } from '../../../../src/core/row/read/readEdgeKind.js';
import { readCutBy, readHolesBy } from '../../../../src/core/row/read/readProcess.js';
import { readSlot } from '../../../../src/core/row/read/readSlot.js';
import { refusalText } from '../../../support/refusal.js';

const words = (...texts: string[]) => texts;

describe('how an edge was made', () => {
  it.each([
    [
      'sheared',
      words('sheared', 'SHEARED', 'shear', 'sheared edge', 'sheared ends', 'hand flame cut', 'guillotined'),
    ],
    [
      'machine cut',
      words(
        'sawn',
        'saw cut',
        'Saw-cut',
        'saw cut edge',
        'flame-cut',
        'gas cut',
        'plasma',
        'laser cut',
        'thermally cut',
        'milled',
      ),
    ],
    ['rolled', words('rolled', 'as-rolled', 'mill edge', 'universal mill edge')],
    ['sheared connection end', words('sheared connection end')],
  ])('%s', (kind, texts) => {
    for (const text of texts) expect(readEdgeKind(text, 'Edge kind'), text).toBe(kind);
  });

  it('is refused in words of two meanings', () => {
    for (const text of ['mill', 'cut', 'torch', 'R', 'sheared/rolled', 'none'])
      expect(refusalText(() => readEdgeKind(text, 'Edge kind'))).toBe(
        `Edge kind: '${text}' is not a kind of edge. Write sheared, machine cut, rolled, sheared connection end.`,
      );
  });
});

describe('what cuts a part and makes its holes', () => {
  it.each([
    ['press', words('press', 'shear', 'SHEARED', 'ironworker')],
    ['saw', words('saw', 'sawn', 'SAW CUT', 'band-saw', 'cold saw', 'chop saw')],
    ['burn', words('burn', 'plasma', 'laser', 'flame cut', 'oxy-fuel', 'plasma table')],
    ['bought', words('bought', 'buy-out', 'B/O', 'by others', 'sublet')],
  ])('cut by: %s', (by, texts) => {
    for (const text of texts) expect(readCutBy(text, 'Cut by'), text).toBe(by);
  });

  it.each([
    ['punch', words('punch', 'PUNCHED')],
    ['drill', words('drill', 'drilled', 'mag drill')],
    ['burn', words('burn', 'plasma', 'laser cut')],
  ])('holes by: %s', (by, texts) => {
    for (const text of texts) expect(readHolesBy(text, 'Holes by'), text).toBe(by);
  });

  it('is refused where two may be meant or another process', () => {
    for (const text of ['punch/drill', 'punch & ream', 'ream', 'P', 'tap'])
      expect(refusalText(() => readHolesBy(text, 'Holes by'))).toContain('Write punch, drill, burn.');
    for (const text of ['shop', 'hand', 'waterjet', 'press/saw'])
      expect(refusalText(() => readCutBy(text, 'Cut by'))).toContain('Write press, saw, burn, bought.');
  });
});

describe('which way a slot is long', () => {
  it.each([
    ['along', words('along', 'ALONG LENGTH', 'lengthwise', 'parallel to length', 'along the part')],
    ['across', words('across', 'crosswise', 'across the width', 'perpendicular to the length')],
  ])('%s', (way, texts) => {
    for (const text of texts) expect(readSlot(text, 'Slot'), text).toBe(way);
  });

  it('is refused in words that go by the load, the drawing or the kind of slot', () => {
    for (const text of ['transverse', 'parallel', 'horizontal', 'long', 'short', 'LSL', 'x'])
      expect(refusalText(() => readSlot(text, 'Slot'))).toContain('Write along, across.');
  });
});
