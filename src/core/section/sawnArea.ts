import { lengthValue } from '../working/namedValue.js';
import type { AreaStep } from './area.js';
import type { BeamSection } from './beam/beamSection.js';
import type { SawnSection, TubeSection } from './section.js';
import { cornerCaution, innerCornerWalls, outerCornerWalls } from './tubeCorner.js';

/** What four rounded corners of radius 1 lack of four square ones. */
const fourCorners = 4 - Math.PI;
const nominalWall =
  "By the nominal wall, as the weight of a tube is: AISC's tables give the area of inch tubes by 0.93 of it.";

/**
 * The area of a tube, tee or beam as a step.
 *
 * Formula: tube a · b − (a − 2t) · (b − 2t) − (4 − π) · (ro² − ri²) with corners ro = 2t outside and ri = t inside;
 * round tube π · t · (D − t); tee t · (a + b − t), sharp and not tapered; beam by table
 * @param section the section, dimensions in mm
 * @returns area in mm² with its formula, values and source
 * Valid for a wall under half the tube; throws nothing.
 * @example a tube 100 × 50 × 5: 1336 mm²
 * Source: plane geometry; corners of tubes: EN 10219-2 to 6 mm (from memory); beams: AISC Shapes Database
 *   15.0, EN 10365.
 */
export function sawnAreaStep(section: SawnSection): AreaStep {
  if (section.kind === 'beam') return beamStep(section);
  const { thicknessMm: t } = section;
  const wall = lengthValue('t', 'thickness', t);
  switch (section.kind) {
    case 'tube':
      return tubeStep(section);
    case 'round tube': {
      const areaMm2 = Math.PI * t * (section.diameterMm - t);
      const values = [lengthValue('D', 'outside diameter', section.diameterMm), wall];
      const cautions = [nominalWall];
      return { areaMm2, formula: 'A = π · t · (D − t)', values, source: 'plane geometry', cautions };
    }
    case 'tee': {
      const { flangeWidthMm: a, depthMm: b } = section;
      const values = [lengthValue('a', 'flange width', a), lengthValue('b', 'depth of the stem', b), wall];
      const cautions = ['Taken as sharp and without taper: within about 1% of rolled tees.'];
      const formula = 'A = t · (a + b − t)';
      return { areaMm2: t * (a + b - t), formula, values, source: 'plane geometry', cautions };
    }
  }
}

function beamStep({ name, areaMm2, standard }: BeamSection): AreaStep {
  const value = {
    symbol: 'A',
    meaning: `area of ${name} in the table`,
    kind: 'area',
    value: areaMm2,
  } as const;
  const source = standard === 'AISC' ? 'AISC Shapes Database 15.0' : standard;
  return { areaMm2, formula: 'A by table', values: [value], source };
}

function tubeStep({ depthMm: a, widthMm: b, thicknessMm: t }: TubeSection): AreaStep {
  const cornersMm2 = fourCorners * ((outerCornerWalls * t) ** 2 - (innerCornerWalls * t) ** 2);
  return {
    areaMm2: a * b - (a - 2 * t) * (b - 2 * t) - cornersMm2,
    formula: 'A = a · b − (a − 2t) · (b − 2t) − (4 − π) · (ro² − ri²), ro = 2t, ri = t',
    values: [
      lengthValue('a', 'depth', a),
      lengthValue('b', 'width', b),
      lengthValue('t', 'thickness of the wall', t),
    ],
    source: 'plane geometry; corners: EN 10219-2 (from memory)',
    cautions: [nominalWall, ...cornerCaution(t)],
  };
}
