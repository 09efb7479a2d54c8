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
];

/** What makes the holes. */
export const readHolesBy = wordReader<HolesBy>(
  {
    punch: ['punch', 'punched', 'punching', 'press'],
    drill: ['drill', 'drilled', 'drilling'],
    burn: burnWords,
  },
  'how holes are made',
);

/** What cuts the part. */
export const readCutBy = wordReader<CutBy>(
  {
    press: ['press', 'shear', 'sheared', 'shearing', 'ironworker'],
    saw: ['saw', 'sawn', 'sawed', 'saw cut', 'sawing', 'band saw', 'bandsaw', 'cold saw'],
    burn: burnWords,
    bought: ['bought', 'bought out', 'buy', 'buyout', 'buy out', 'purchased'],
  },
  'what cuts a part',
);
