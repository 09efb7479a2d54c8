import type { FaceId } from '../part/part.js';
import type { Reading } from '../row/job/reading.js';
import { formatNumber } from '../quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../quantity/units.js';
import { describeHole } from '../tooling/hole.js';
import { holeTitle } from '../row/job/rowJob.js';
import { listWords } from './listWords.js';
import { size, sizes } from './sizes.js';

/** What was read or taken, as a clause of the note: `8 × Ø13/16`, `usual gage 1-3/4 in taken`. Empty for what the row already says so, and for what is a sentence of its own. */
export function readingWords(reading: Reading, unit: LengthUnit): string {
  switch (reading.is) {
    case 'ignored mark':
      return `${reading.mark} of the section changes nothing here`;
    case 'quantity assumed':
      return 'quantity 1 assumed';
    case 'tensile as typed':
      return `${reading.typed} taken as the highest`;
    case 'hands':
      return `${reading.right} right-hand and ${reading.left} left-hand`;
    case 'miter':
      return `miter ${formatNumber(reading.rad / radianPerDegree, 1)}° from square`;
    case 'holes': {
      const fit = reading.fitOfBolt ? `, ${reading.fitOfBolt.fit} for bolt ${reading.fitOfBolt.bolt}` : '';
      const finishing = reading.countersunk ? ', countersunk, which is not checked' : '';
      if (reading.typedSo && reading.counted && fit === '') return finishing.replace(', ', '');
      return `${reading.count} × ${describeHole(reading.hole, unit)}${assumed(reading)}${fit}${finishing}`;
    }
    case 'notches': {
      const { widthMm, depthMm, placed } = reading;
      if (placed && reading.counted && !reading.byMiddle) return '';
      const where = placed ? (reading.byMiddle ? ', placed by the middle' : '') : ', taken at an edge';
      return `${counted(reading, 'notch', 'notches')} ${size(widthMm, unit)} wide, ${size(depthMm, unit)} deep${where}`;
    }
    case 'corners clipped':
      if (reading.counted && reading.alongMm === reading.acrossMm) return '';
      return `${counted(reading, 'corner', 'corners')} clipped ${sizes([reading.alongMm, reading.acrossMm], unit)}`;
    case 'bends':
      return `${counted(reading, 'bend', 'bends')} ${size(reading.lengthMm, unit)} long, given as a flat blank`;
    case 'sharp corners':
      return 'the notcher leaves inside corners sharp: drill them first where they must not crack';
    case 'rolling not known':
      return 'rolling direction of the plate not known: a bend along it needs half as much inside radius again';
    case 'unknown finish':
      return `finish '${reading.typed}' is not known here, so nothing was checked for it`;
    case 'no mass':
      return 'no length given, so no mass';
    case 'cut elsewhere':
      return `${elsewhere[reading.by]}${reading.cuts ? ` with its ${listWords(reading.cuts)}` : ''}, as the row says; the cut was not checked on a press`;
    case 'cut by saw':
      return 'cut by saw: no press station cuts this section';
    case 'no tools':
      return 'the shop has no list of tools, so none were checked';
    case 'face of the holes':
      return `${holeTitle(reading.group)} taken in ${faceWords[reading.face]}, the only face wide enough`;
    case 'bolt of the hole':
      return `bolt ${reading.bolt} taken from ${reading.group === 0 ? 'the hole' : holeTitle(reading.group)}`;
    case 'bolt not known':
      return 'no bolt given';
    case 'no bolt':
      return `${reading.group === 0 ? '' : `${holeTitle(reading.group)} `}no bolt, so the distances were checked by press practice only`;
    case 'edges':
      return [
        ...(reading.edge === undefined ? [] : [`edge ${reading.edge}`]),
        ...(reading.end === undefined
          ? []
          : [reading.end.endsWith(' end') ? reading.end : `end ${reading.end}`]),
      ].join(', ');
    case 'places':
      return placeWords(reading, unit);
    case 'greatest edge distance':
      return `caution: ${size(reading.givenMm, unit)} from bolt to nearest edge is over ${size(reading.greatestMm, unit)}, the most ${reading.code} allows`;
    case 'narrow strip':
      return `caution: a strip ${size(reading.givenMm, unit)} wide, under ${size(reading.leastMm, unit)}, may twist as it is sheared`;
    case 'made otherwise':
      return '';
  }
}

const faceWords: Record<FaceId, string> = {
  plate: 'the plate',
  'leg A': 'the longer leg',
  'leg B': 'the shorter leg',
  web: 'the web',
  'flange 1': 'a flange',
  'flange 2': 'a flange',
};

const elsewhere = { saw: 'sawn', burn: 'burned', bought: 'bought cut to length' };

function assumed({ counted }: { counted: boolean }): string {
  return counted ? '' : ' (one assumed)';
}

function counted({ count, counted }: { count: number; counted: boolean }, one: string, many: string): string {
  return counted ? `${count} ${count === 1 ? one : many}` : `1 ${one} (one assumed)`;
}

function placeWords({ group, reading, mm }: Extract<Reading, { is: 'places' }>, unit: LengthUnit): string {
  const of = group === 0 ? '' : `${holeTitle(group)} `;
  switch (reading) {
    case 'usual gage':
      return `${of}usual gage ${size(mm ?? 0, unit)} taken`;
    case 'evenly spaced':
    case 'centered':
    case 'in the middle of the width':
    case 'from the right end':
      return `${of}read as ${reading}`;
    case 'at each end':
    case 'in each corner':
      return `${of}read as one ${reading}`;
  }
}

const madeBy = { drill: 'drilled', burn: 'burned', punch: 'punched', tap: 'drilled and tapped' };

/** What is said of the row as a sentence of its own: holes that are not punched. */
export function readingSentence(reading: Reading): string {
  switch (reading.is) {
    case 'made otherwise': {
      const { how, group } = reading;
      const title = holeTitle(group);
      if (how.by === 'row') {
        return `${title}: ${madeBy[how.process]}, as the row says; not checked on a press.`;
      }
      const make = how.process === 'drill' ? 'drill it' : 'punch 2 mm under and ream';
      return `${title}: ${make}; ${how.because}.`;
    }
    default:
      return '';
  }
}
