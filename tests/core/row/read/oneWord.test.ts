// The cells that hold one word of a few.
import { describe, expect, it } from 'vitest';
import { legText } from '../../../../src/core/row/read/legText.js';
import { readFinishUnder } from '../../../../src/core/row/read/readFinish.js';
import { readEdgeKind } from '../../../../src/core/row/read/readEdgeKind.js';
import { readCutBy, readHolesBy } from '../../../../src/core/row/read/readProcess.js';
import { readSlot } from '../../../../src/core/row/read/readSlot.js';
import { refusalText } from '../../../support/refusal.js';

const words = (...texts: string[]) => texts;

describe('how an edge was made', () => {
  it.each([
    [
      'sheared',
      words(
        'sheared',
        'SHEARED',
        'shear',
        'sheared edge',
        'sheared ends',
        'hand flame cut',
        'guillotined',
        'geschert',
        'geknipt',
      ),
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
        'gesägt',
        'gesägte Kante',
        'brenngeschnitten',
        'gezaagd',
      ),
    ],
    ['rolled', words('rolled', 'gewalzt', 'gewalste rand', 'as-rolled', 'mill edge', 'universal mill edge')],
    ['sheared connection end', words('sheared connection end')],
  ])('%s', (kind, texts) => {
    for (const text of texts) expect(readEdgeKind(text, 'Edge kind'), text).toBe(kind);
  });

  it('is refused in words of two meanings', () => {
    for (const text of ['mill', 'cut', 'torch', 'R', 'sheared/rolled', 'none', 'geschnitten', 'gesneden'])
      expect(refusalText(() => readEdgeKind(text, 'Edge kind'))).toBe(
        `Edge kind: '${text}' is not a kind of edge. Write sheared, machine cut, rolled, sheared connection end.`,
      );
  });
});

describe('what cuts a part and makes its holes', () => {
  it.each([
    ['press', words('press', 'shear', 'SHEARED', 'ironworker', 'Schere', 'knippen')],
    ['saw', words('saw', 'Säge', 'gesägt', 'zagen', 'sawn', 'SAW CUT', 'band-saw', 'cold saw', 'chop saw')],
    [
      'burn',
      words(
        'burn',
        'Brennen',
        'gelasert',
        'snijbranden',
        'plasma',
        'laser',
        'flame cut',
        'oxy-fuel',
        'plasma table',
      ),
    ],
    ['bought', words('bought', 'Zukauf', 'ingekocht', 'buy-out', 'B/O', 'by others', 'sublet')],
  ])('cut by: %s', (by, texts) => {
    for (const text of texts) expect(readCutBy(text, 'Cut by'), text).toBe(by);
  });

  it.each([
    ['punch', words('punch', 'PUNCHED', 'gestanzt', 'ponsen')],
    ['drill', words('drill', 'drilled', 'mag drill', 'gebohrt', 'boren')],
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
    [
      'along',
      words(
        'along',
        'ALONG LENGTH',
        'lengthwise',
        'parallel to length',
        'along the part',
        'längs',
        'in lengterichting',
      ),
    ],
    [
      'across',
      words('across', 'crosswise', 'across the width', 'perpendicular to the length', 'quer', 'dwars'),
    ],
  ])('%s', (way, texts) => {
    for (const text of texts) expect(readSlot(text, 'Slot'), text).toBe(way);
  });

  it('is refused in words that go by the load, the drawing or the kind of slot', () => {
    for (const text of ['transverse', 'parallel', 'horizontal', 'long', 'short', 'LSL', 'x'])
      expect(refusalText(() => readSlot(text, 'Slot'))).toContain('Write along or across.');
  });
});

describe('which leg or face', () => {
  it.each([
    [
      'long',
      words(
        'long',
        'Long leg',
        'the long leg',
        'lang',
        'langer Schenkel',
        'lange been',
        'im langen Schenkel',
      ),
    ],
    ['short', words('short', 'kurz', 'kurzer Schenkel', 'korte been')],
    ['web', words('Steg', 'lijf', 'im Steg')],
    ['flange', words('Flansch', 'flens')],
    ['both', words('beide', 'beide Schenkel', 'both legs')],
    ['4', words('4', '4 leg', 'leg 4', '4 Schenkel')],
  ])('%s', (leg, texts) => {
    for (const text of texts) expect(legText(text).toLowerCase(), text).toBe(leg);
  });
});

describe('whether it is galvanized', () => {
  it.each(['Galvanized', 'Galv.', 'HDG', 'verzinkt', 'Verzinkung'])('under %s is yes or no', (heading) => {
    for (const text of ['yes', 'Y', 'ja', 'x'])
      expect(readFinishUnder(heading)(text), text).toBe('galvanized');
    for (const text of ['no', 'N', 'nein', 'nee'])
      expect(readFinishUnder(heading)(text), text).toBe('nothing');
    expect(readFinishUnder(heading)('HDG')).toBe('galvanized');
  });

  it('is not told by yes under Finish', () => {
    for (const text of ['yes', 'ja', 'x']) expect(readFinishUnder('Finish')(text)).toBe('unknown');
  });

  it.each([
    'roh',
    'blank',
    'grundiert',
    'pulverbeschichtet',
    'RAL 7016',
    'gestraald',
    'gemenied',
    'onbehandeld',
  ])('%s changes nothing', (text) => {
    expect(readFinishUnder('Oberfläche')(text)).toBe('nothing');
  });
});
