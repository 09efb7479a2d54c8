import type { CutBy, HolesBy } from '../job/rowJob.js';
import { wordReader } from './wordReader.js';

const burnWords = [
  'burn',
  'burned',
  'burnt',
  'burning',
  'flame',
  'flame cut',
  'gas',
  'gas cut',
  'torch',
  'plasma',
  'plasma cut',
  'laser',
  'laser cut',
  'oxy',
  'oxy cut',
  'oxyfuel',
  'oxy fuel',
  'torch cut',
  'thermal',
  'thermally cut',
  'plasma table',
  'burn table',
  ...['brennen', 'gebrannt', 'brenner', 'brennschneiden', 'brenngeschnitten', 'brennschnitt', 'autogen'],
  ...['plasmageschnitten', 'lasern', 'gelasert', 'lasergeschnitten', 'laserschnitt'],
  ...['branden', 'gebrand', 'snijbranden', 'snijbrander', 'autogeen', 'lasersnijden', 'plasmasnijden'],
  ...['gelaserd', 'lasergesneden', 'plasmagesneden'],
];

/** What makes the holes. */
export const readHolesBy = wordReader<HolesBy>(
  {
    punch: [
      ...['punch', 'punched', 'punching', 'press', 'stanzen', 'gestanzt', 'stanze', 'lochen', 'gelocht'],
      ...['ponsen', 'geponst', 'pons', 'ponsmachine'],
    ],
    drill: [
      ...['drill', 'drilled', 'drilling', 'drill press', 'mag drill', 'magdrill', 'drill line'],
      ...['bohren', 'gebohrt', 'bohrer', 'bohrmaschine', 'boren', 'geboord', 'boor', 'kolomboor'],
    ],
    burn: burnWords,
  },
  'how holes are made',
);

/** What cuts the part. */
export const readCutBy = wordReader<CutBy>(
  {
    press: [
      ...['press', 'shear', 'sheared', 'shearing', 'ironworker', 'presse', 'schere', 'scheren', 'geschert'],
      ...['pers', 'knippen', 'geknipt', 'schaar'],
    ],
    saw: [
      ...['saw', 'sawn', 'sawed', 'saw cut', 'sawing', 'band saw', 'bandsaw', 'cold saw', 'cold sawn'],
      ...['chop saw', 'chopsaw', 'abrasive saw', 'miter saw', 'mitre saw', 'hacksaw'],
      ...['säge', 'saege', 'sägen', 'gesägt', 'gesaegt', 'bandsäge', 'kreissäge', 'zaag', 'zagen', 'gezaagd'],
      ...['lintzaag'],
    ],
    burn: burnWords,
    bought: [
      ...['bought', 'bought out', 'buy', 'buyout', 'buy out', 'purchased', 'b/o', 'by others'],
      ...['outsourced', 'sublet', 'subcontract', 'subcontracted'],
      ...['zukauf', 'zugekauft', 'kaufteil', 'fremdvergabe', 'extern', 'bauseits', 'zuschnitt extern'],
      ...['inkoop', 'ingekocht', 'uitbesteed', 'koopdeel'],
    ],
  },
  'what cuts a part',
);
