import { requirePositive } from '../requireRange.js';
import { lengthValue as length } from '../working/namedValue.js';
import type { NamedValue, Working } from '../working/working.js';
import { channelSource } from './channelTable.js';
import type { AngleSection, AnySection } from './section.js';
import { sawnAreaStep } from './sawnArea.js';

const geometry = 'plane geometry';
const cornerShare = 1 - Math.PI / 4;

/**
 * The area of a section.
 *
 * Formula: flat w · t; round π · d² / 4; square a²; angle t · (a + b − t) + (1 − π/4) · (r1² − 2 · r2²) with the toe
 * radius r2 = r1 / 2; channel by table; tubes and tees by {@link sawnAreaStep}
 * @param section the section, dimensions in mm
 * @param working collects the step when given
 * @returns area in mm²
 * Valid for sections with positive dimensions; throws `invalid` otherwise. An angle whose root radius is not known
 * is taken as sharp, which is a little too small.
 * @example sectionAreaMm2(readSection('L50x50x5', 'Section', 'mm').section) // 480.3
 * Source: plane geometry; angles: EN 10056-1 (from memory); channels: AISC Manual Part 1, EN 10365;
 *   tubes: EN 10219-2 (from memory).
 */
export function sectionAreaMm2(section: AnySection, working?: Working): number {
  if (working) return workedArea(section, working);
  const before = known.get(section);
  if (before !== undefined) return before;
  const areaMm2 = workedArea(section);
  known.set(section, areaMm2);
  return areaMm2;
}

/** Rows of a list have the same few sections. */
const known = new WeakMap<AnySection, number>();

function workedArea(section: AnySection, working?: Working): number {
  const { areaMm2, formula, values, source, cautions } = describe(section);
  for (const each of values) if (each.symbol !== 'r1') requirePositive(each.meaning, Number(each.value));
  requirePositive('Area', areaMm2);
  working?.step({
    title: `Area of ${section.designation}`,
    formula,
    values,
    result: { symbol: 'A', meaning: 'section area', kind: 'area', value: areaMm2 },
    source,
    ...(cautions ? { cautions } : {}),
  });
  return areaMm2;
}

export interface AreaStep {
  areaMm2: number;
  formula: string;
  values: NamedValue[];
  source: string;
  cautions?: string[];
}

function describe(section: AnySection): AreaStep {
  switch (section.kind) {
    case 'flat': {
      const { widthMm: w, thicknessMm: t } = section;
      const values = [length('w', 'width', w), length('t', 'thickness', t)];
      return { areaMm2: w * t, formula: 'A = w · t', values, source: geometry };
    }
    case 'round': {
      const values = [length('d', 'diameter', section.diameterMm)];
      const areaMm2 = (Math.PI * section.diameterMm ** 2) / 4;
      return { areaMm2, formula: 'A = π · d² / 4', values, source: geometry };
    }
    case 'square': {
      const values = [length('a', 'side', section.sideMm)];
      return { areaMm2: section.sideMm ** 2, formula: 'A = a²', values, source: geometry };
    }
    case 'channel': {
      const values: NamedValue[] = [
        {
          symbol: 'A',
          meaning: `area of ${section.name} in the table`,
          kind: 'area',
          value: section.areaMm2,
        },
      ];
      const source = channelSource(section);
      return { areaMm2: section.areaMm2, formula: 'A by table', values, source };
    }
    case 'angle':
      return angleStep(section);
    default:
      return sawnAreaStep(section);
  }
}

function angleStep(section: AngleSection): AreaStep {
  const { legAMm: a, legBMm: b, thicknessMm: t, rootRadiusMm: r1, rootRadiusKnown } = section;
  const values = [length('a', 'leg', a), length('b', 'leg', b), length('t', 'thickness', t)];
  const sharpMm2 = t * (a + b - t);
  if (r1 === 0) {
    const caution = 'The root radius of this size is not known: the angle is taken as sharp.';
    return {
      areaMm2: sharpMm2,
      formula: 'A = t · (a + b − t)',
      values,
      source: geometry,
      ...(rootRadiusKnown ? {} : { cautions: [caution] }),
    };
  }
  return {
    areaMm2: sharpMm2 + cornerShare * (r1 ** 2 - 2 * (r1 / 2) ** 2),
    formula: 'A = t · (a + b − t) + (1 − π/4) · (r1² − 2 · r2²), r2 = r1 / 2',
    values: [...values, length('r1', 'root radius', r1)],
    source: 'EN 10056-1 (from memory)',
  };
}
