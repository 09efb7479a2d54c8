// What separates a line of work from what parts are called: in a name each word of work stands before the thing it was
// done to, and nothing more is told of the work.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workText } from '../../../../src/core/row/headings/workText.js';

const work = [
  ...['w/ cope both ends', 'cope', 'cope to suit', 'COPE TOP FLANGE', 'coped both ends', 'notch 2x1 one end'],
  ...[
    'notch corner',
    'Notched per detail 3',
    'miter 45 LH end',
    'mitered both ends',
    'MITRE RIGHT END 30 DEG',
  ],
  ...['+ 2 slots 13/16 x 1-3/4', 'slots both legs', 'slotted holes', 'csk 4 holes far side', 'CSK FAR SIDE'],
  ...[
    'countersink holes',
    "c'sk",
    'tap 1/2-13',
    'drilled & tapped',
    'bend 90 at 12"',
    'BENT 2 PLACES',
    'bent as shown',
  ],
  ...[
    'see detail 4 for holes',
    'drill only',
    'drill',
    '(2) 13/16 HOLES THIS END',
    'field drill 9/16',
    'holes by others',
  ],
  ...[
    'galv. vent hole each end',
    'vent holes',
    'All holes are standard unless noted',
    'HOLES 13/16 U.N.O.',
    'punch',
  ],
  ...[
    'punched 13/16 each end',
    '4 holes',
    'ream to 15/16',
    'clip corners',
    'clip 1x1',
    'corner clips',
    'chamfer one edge',
  ],
  ...['camber 1/2 up', 'roll to 24 ft radius', 'HOT DIP GALVANIZE AFTER FABRICATION', 'HDG', 'saw cut ends'],
  ...[
    'flame cut one edge',
    'cutout for pipe',
    'bevel for weld',
    'PLATES WITH HOLES',
    'BEND PLATES',
    'drill jig holes',
  ],
  ...[
    'each end typ',
    'both flanges',
    'far side only',
    '4 Bohrungen Ø18',
    'Langlöcher beidseitig',
    'Gehrung 45°',
  ],
  ...[
    'ausklinken',
    'Ecken gefast, Loch mittig',
    'gaten boren',
    'verstek 45',
    'trou oblong',
    'taladros',
    'Kanten 90°',
  ],
] as const;

const names = [
  ...['PUNCHED PLATES', 'Bent angles', 'HANDRAIL w/ KICKPLATE', 'Notched beams, level 2', 'MITERED FRAMES'],
  ...[
    'Slotted and coped beams',
    'bent, punched plates',
    'STAIR 2 - BENT PLATES',
    'GALVANIZED HANDRAIL',
    'Drilled clip angles',
  ],
  ...[
    'HOT DIP GALVANIZED STAIR STRINGERS',
    'CLIP ANGLES',
    'CLIPS',
    'Grating clips level 3',
    'CUT LIST',
    'HOLE SCHEDULE',
  ],
  ...[
    'SCOPE OF WORK',
    'STREAM CROSSING',
    'MANHOLE FRAMES',
    'TRANSMITTER SUPPORT',
    'TELESCOPING LADDER',
    'WHOLE LEVEL',
  ],
  ...[
    'HOT ROLLED PLATES',
    'Left stringers',
    'LANDING',
    'CATWALK LEVEL 2',
    'Stair tower, north side',
    'Treads and risers',
  ],
  ...[
    'Response platform',
    'FLOOR PLATES',
    'ROLL-UP DOOR FRAMES',
    'Gelochte Bleche',
    'Kantteile',
    'Lochbleche',
    'Geländer',
  ],
] as const;

describe('a text of a list', () => {
  it.each(work)('says work: %s', (text) => {
    expect(workText(text)).toMatchObject({ isName: false });
  });

  it.each(names)('is what parts are called: %s', (text) => {
    expect(workText(text)?.isName ?? true).toBe(true);
  });

  const done = fc.constantFrom(
    'punched',
    'notched',
    'coped',
    'mitered',
    'drilled',
    'slotted',
    'bent',
    'galvanized',
  );
  const thing = fc.constantFrom(
    'plates',
    'angles',
    'beams',
    'frames',
    'handrail',
    'stringers',
    'kickplate',
    'posts',
  );
  const name = fc
    .tuple(
      fc.array(done, { minLength: 1, maxLength: 3 }),
      thing,
      fc.constantFrom('', ', level 2', ' stair 1'),
    )
    .map(([words, what, where]) => `${words.join(' and ')} ${what}${where}`);
  const typed = (text: fc.Arbitrary<string>) =>
    fc.tuple(text, fc.boolean()).map(([each, isUpper]) => (isUpper ? each.toUpperCase() : each));

  it('is a name where work that was done stands before a thing', () => {
    fc.assert(
      fc.property(typed(name), (text) => {
        expect(workText(text)).toMatchObject({ isName: true, isDetailed: false });
      }),
    );
  });

  it('is no name once a size, a count or a place of the work is told, or nothing follows the work', () => {
    const told = fc.constantFrom(
      'both ends',
      '13/16',
      '2x1',
      'far side',
      'each flange',
      'per detail 4',
      '(4) holes',
      '45',
    );
    fc.assert(
      fc.property(typed(fc.tuple(name, told).map((each) => each.join(' '))), (text) => {
        expect(workText(text), text).toMatchObject({ isName: false });
      }),
    );
    fc.assert(
      fc.property(
        typed(fc.array(done, { minLength: 1, maxLength: 3 }).map((each) => each.join(', '))),
        (text) => {
          expect(workText(text), text).toMatchObject({ isName: false });
        },
      ),
    );
  });

  it('says the same whatever its case, and the spaces and stops around it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...work, ...names), fc.constantFrom('', ' ', '  '), (text, around) => {
        const plain = workText(text);
        expect(workText(`${around}${text}${around}`)).toEqual(plain);
        expect(workText(text.toUpperCase())?.isName ?? true).toBe(plain?.isName ?? true);
      }),
    );
  });

  it('is read in a time that its length bounds', () => {
    for (const part of ['clip ', 'both ', '1 x ', 'galv ', 'punched and '])
      expect(() => workText(part.repeat(5000))).not.toThrow();
  });
});
