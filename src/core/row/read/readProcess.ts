import type { CutBy, HolesBy } from '../rowJob.js';
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
];

/** What makes the holes. */
export const readHolesBy = wordReader<HolesBy>(
  {
    punch: ['punch', 'punched', 'punching', 'press'],
    drill: ['drill', 'drilled', 'drilling', 'drill press', 'mag drill', 'magdrill', 'drill line'],
    burn: burnWords,
  },
  'how holes are made',
);

/** What cuts the part. */
export const readCutBy = wordReader<CutBy>(
  {
    press: ['press', 'shear', 'sheared', 'shearing', 'ironworker'],
    saw: [
      ...['saw', 'sawn', 'sawed', 'saw cut', 'sawing', 'band saw', 'bandsaw', 'cold saw', 'cold sawn'],
      ...['chop saw', 'chopsaw', 'abrasive saw', 'miter saw', 'mitre saw', 'hacksaw'],
    ],
    burn: burnWords,
    bought: [
      ...['bought', 'bought out', 'buy', 'buyout', 'buy out', 'purchased', 'b/o', 'by others'],
      ...['outsourced', 'sublet', 'subcontract', 'subcontracted'],
    ],
  },
  'what cuts a part',
);
