import { refuse } from '../../../src/core/inputError.js';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { quoted } from '../../../src/core/quantity/cellValue.js';
import { formatLength, formatNumber } from '../../../src/core/quantity/formatLength.js';
import { readAngle } from '../../../src/core/quantity/readAngle.js';
import { readCount } from '../../../src/core/quantity/readCount.js';
import { readForce } from '../../../src/core/quantity/readForce.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import {
  type LengthUnit,
  mmPerInch,
  newtonPerKilonewton,
  radianPerDegree,
} from '../../../src/core/quantity/units.js';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { readHole } from '../../../src/core/tooling/readHole.js';
import type { NotationKind } from '../../../src/core/notation/notation.js';

const wholeNumber = 'Write a whole number.';
const sixtyFourths = 64;
const greatestMiterDegree = 60;

/**
 * What a text is read as, in words that are the same in every shop: sizes in inches where they are fractions of one,
 * else in mm. Throws what the reader throws.
 */
export function readingOf(kind: NotationKind, text: string, unit: LengthUnit): string {
  switch (kind) {
    case 'section': {
      const { section, lengthMm } = readAnySection(text, 'Section', unit);
      return lengthMm === undefined
        ? section.designation
        : `${section.designation}, ${sizeText(lengthMm)} long`;
    }
    case 'grade':
      return readGrade(text, 'Grade', [], unit).name;
    case 'hole': {
      const { hole, count } = readHole(text, 'Hole', unit);
      return count === undefined ? holeText(hole) : `${count} × ${holeText(hole)}`;
    }
    case 'bolt':
      return readBolt(text, 'Bolt', unit).name;
    case 'length':
      return sizeText(readLength(text, 'Length', unit, 'distance'));
    case 'count': {
      const count = readCount(text, 'Qty', wholeNumber);
      if (!Number.isInteger(count) || count < 1)
        refuse('Qty', text, `${quoted(text)} is no count.`, wholeNumber);
      return String(count);
    }
    case 'angle':
      return `${formatNumber(readAngle(text, 'Miter', 0, greatestMiterDegree) / radianPerDegree, 4)}°`;
    case 'force':
      return `${formatNumber(readForce(text, 'Punch force', null, unit) / newtonPerKilonewton, 3)} kN`;
  }
}

function sizeText(mm: number): string {
  const parts = (mm / mmPerInch) * sixtyFourths;
  const isFraction = Math.abs(parts - Math.round(parts)) < 1e-6;
  return isFraction ? `${formatLength(mm, 'in')} in` : `${formatNumber(mm, 4)} mm`;
}

function holeText(hole: Hole): string {
  switch (hole.shape) {
    case 'round':
      return `Ø${sizeText(hole.diameterMm)}`;
    case 'square':
      return `square ${sizeText(hole.sideMm)}`;
    case 'hexagon':
      return `hexagon ${sizeText(hole.acrossFlatsMm)}`;
    default:
      return `${hole.shape} ${sizeText(hole.widthMm)} × ${sizeText(hole.lengthMm)}`;
  }
}
