import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { NamedValue, Working } from '../working/working.js';
import type { BeamSection } from './beam/beamSection.js';
import type { AngleSection, AnySection } from './section.js';
import { outerCornerWalls } from './tubeCorner.js';

/** What a quarter circle of radius 1 is shorter than the two sides of its corner. */
const corner = 2 - Math.PI / 2;

interface PerimeterStep {
  perimeterMm: number;
  formula: string;
  values: NamedValue[];
  caution?: string;
}

/**
 * The outside perimeter of a section: what is painted. The inside of tubes is not.
 *
 * Formula: flat 2 · (w + t); round π · d; square 4 · a; angle 2 · (a + b) − (2 − π/2) · (r1 + 2 · r2), r2 = r1 / 2;
 * channel 2 · h + 4 · bf − 2 · tw; tube 2 · (a + b) − 4 · (2 − π/2) · 2t; round tube π · D; tee 2 · (a + b);
 * beam 2 · h + 4 · b − 2 · tw − 4 · (2 − π/2) · r
 * @param section the section, dimensions in mm
 * @param working collects the step when given
 * @returns perimeter in mm
 * Valid for positive dimensions; throws `invalid` otherwise. Channels and tees are taken as sharp, which is up to 5%
 * too much.
 * @example sectionPerimeterMm(readSection('L100x100x10', 'Section', 'mm').section) // 389.7
 * Source: plane geometry; the surfaces that EN 10056-1 and EN 10219-2 print agree (from memory).
 */
export function sectionPerimeterMm(section: AnySection, working?: Working): number {
  const { perimeterMm, formula, values, caution } = describe(section);
  for (const each of values) if (each.symbol !== 'r1') requirePositive(each.meaning, Number(each.value));
  requirePositive('Perimeter', perimeterMm);
  working?.step({
    title: `Perimeter of ${section.designation}`,
    formula,
    values,
    result: lengthValue('u', 'outside perimeter', perimeterMm),
    source: 'plane geometry',
    ...(caution === undefined ? {} : { cautions: [caution] }),
  });
  return perimeterMm;
}

function describe(section: AnySection): PerimeterStep {
  switch (section.kind) {
    case 'flat': {
      const { widthMm: w, thicknessMm: t } = section;
      const values = [lengthValue('w', 'width', w), lengthValue('t', 'thickness', t)];
      return { perimeterMm: 2 * (w + t), formula: 'u = 2 · (w + t)', values };
    }
    case 'round':
    case 'round tube': {
      const values = [lengthValue('d', 'outside diameter', section.diameterMm)];
      return { perimeterMm: Math.PI * section.diameterMm, formula: 'u = π · d', values };
    }
    case 'square': {
      const values = [lengthValue('a', 'side', section.sideMm)];
      return { perimeterMm: 4 * section.sideMm, formula: 'u = 4 · a', values };
    }
    case 'angle':
      return anglePerimeter(section);
    case 'channel': {
      const { depthMm: h, flangeWidthMm: b, webThicknessMm: tw } = section;
      const values = [
        lengthValue('h', 'depth', h),
        lengthValue('b', 'flange width', b),
        lengthValue('tw', 'web', tw),
      ];
      const formula = 'u = 2 · h + 4 · b − 2 · tw';
      return { perimeterMm: 2 * h + 4 * b - 2 * tw, formula, values, caution: sharp };
    }
    case 'tube': {
      const { depthMm: a, widthMm: b, thicknessMm: t } = section;
      const values = [...sides(a, b, 'depth', 'width'), lengthValue('t', 'thickness of the wall', t)];
      const perimeterMm = 2 * (a + b) - 4 * corner * outerCornerWalls * t;
      const formula = 'u = 2 · (a + b) − 4 · (2 − π/2) · 2t';
      return { perimeterMm, formula, values, caution: 'Outside only.' };
    }
    case 'beam':
      return beamPerimeter(section);
    case 'tee': {
      const { flangeWidthMm: a, depthMm: b } = section;
      const values = sides(a, b, 'flange width', 'depth of the stem');
      return { perimeterMm: 2 * (a + b), formula: 'u = 2 · (a + b)', values, caution: sharp };
    }
  }
}

const sharp = 'Taken as sharp: up to 5% too much.';

function sides(a: number, b: number, first: string, second: string): NamedValue[] {
  return [lengthValue('a', first, a), lengthValue('b', second, b)];
}

/** Twice the depth and the flanges, less the web; the fillets of a European beam shorten it. */
function beamPerimeter(section: BeamSection): PerimeterStep {
  const { depthMm: h, flangeWidthMm: b, webThicknessMm: tw, rootRadiusMm: r } = section;
  const values = sides(h, b, 'depth', 'flange width');
  if (section.form === 'tee')
    return { perimeterMm: 2 * (h + b), formula: 'u = 2 · (h + b)', values, caution: sharp };
  const web = lengthValue('tw', 'web', tw);
  const sharpMm = 2 * h + 4 * b - 2 * tw;
  if (r === 0)
    return {
      perimeterMm: sharpMm,
      formula: 'u = 2 · h + 4 · b − 2 · tw',
      values: [...values, web],
      caution: sharp,
    };
  return {
    perimeterMm: sharpMm - 4 * corner * r,
    formula: 'u = 2 · h + 4 · b − 2 · tw − 4 · (2 − π/2) · r',
    values: [...values, web, lengthValue('r', 'root radius', r)],
  };
}

function anglePerimeter({ legAMm: a, legBMm: b, rootRadiusMm: r1 }: AngleSection): PerimeterStep {
  const values = sides(a, b, 'leg', 'other leg');
  if (r1 === 0) return { perimeterMm: 2 * (a + b), formula: 'u = 2 · (a + b)', values };
  return {
    perimeterMm: 2 * (a + b) - corner * (r1 + 2 * (r1 / 2)),
    formula: 'u = 2 · (a + b) − (2 − π/2) · (r1 + 2 · r2), r2 = r1 / 2',
    values: [...values, lengthValue('r1', 'root radius', r1)],
  };
}
