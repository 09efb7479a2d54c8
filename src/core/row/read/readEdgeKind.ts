import type { EdgeKind } from '../../rule/edgeDistance.js';
import { wordReader } from './wordReader.js';

/** `sawn`, `sawn edge`, `sawn end`, `gesägte Kante`. */
const ofEdges = (words: readonly string[], foreign: readonly string[]) => [
  ...words.flatMap((word) => [word, `${word} edge`, `${word} end`, `${word} edges`, `${word} ends`]),
  ...foreign.flatMap((word) => [word, `${word}e kante`, `${word}e kanten`, `${word}e rand`]),
];

/**
 * How an edge or an end was made, in the words of a shop, American, German or Dutch. A flame cut counts as machine cut, one by hand as sheared, as
 * AS 4100 clause 9.5.2 has it (from memory).
 */
export const readEdgeKind = wordReader<EdgeKind>(
  {
    sheared: ofEdges(
      ['sheared', 'shear', 'cropped', 'guillotined', 'hand flame cut'],
      ['geschert', 'abgeschert', 'schere', 'scherschnitt', 'geknipt', 'schaar'],
    ),
    'machine cut': ofEdges(
      [
        'machine cut',
        'machined',
        'milled',
        'sawn',
        'saw',
        'sawed',
        'saw cut',
        'cold sawn',
        'cold saw cut',
        'gas cut',
        'flame cut',
        'thermal cut',
        'thermally cut',
        'oxy cut',
        'burned',
        'burnt',
        'plasma',
        'plasma cut',
        'laser',
        'laser cut',
      ],
      [
        ...[
          'gesägt',
          'gesaegt',
          'säge',
          'sägeschnitt',
          'gefräst',
          'bearbeitet',
          'brenngeschnitten',
          'brennschnitt',
        ],
        ...['autogen', 'gebrannt', 'plasmageschnitten', 'lasergeschnitten', 'gelasert'],
        ...['gezaagd', 'zaag', 'zaagsnede', 'gefreesd', 'gebrand', 'snijbranden', 'autogeen'],
        ...['plasmagesneden', 'lasergesneden', 'gelaserd'],
      ],
    ),
    rolled: [
      ...ofEdges(
        ['rolled', 'as rolled', 'universal mill'],
        ['gewalzt', 'walzkante', 'walzroh', 'naturkante', 'gewalst', 'walskant'],
      ),
      ...['mill edge', 'mill edges', 'um edge'],
    ],
    'sheared connection end': ['sheared connection end'],
  },
  'a kind of edge',
);
