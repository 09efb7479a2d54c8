import type { Hole } from './hole.js';
import type { NamedValue, Working } from '../working/working.js';

const formulas: Record<Hole['shape'], string> = {
  round: 'p = π · d',
  slot: 'p = π · w + 2 · (l − w)',
  square: 'p = 4 · a',
  rectangle: 'p = 2 · (a + b)',
  hexagon: 'p = 2√3 · s',
};

/**
 * The length of the cut around a hole.
 *
 * Formula: round π·d; slot π·w + 2·(l − w); square 4·a; rectangle 2·(a + b); hexagon 2√3·s.
 * @param hole dimensions in mm
 * @param working collects the step when given
 * @returns the perimeter in mm
 * Valid for any hole with positive dimensions, a slot at least as long as wide. Throws nothing.
 * @example cutPerimeterMm({ shape: 'round', diameterMm: 25 }) // 78.54
 * Source: plane geometry; Groover, Fundamentals of Modern Manufacturing, sheet metal chapter (from memory).
 */
export function cutPerimeterMm(hole: Hole, working?: Working): number {
  const perimeterMm = perimeter(hole);
  working?.step({
    title: 'Cut perimeter',
    formula: formulas[hole.shape],
    values: dimensions(hole),
    result: { symbol: 'p', meaning: 'cut perimeter', kind: 'length', value: perimeterMm },
    source: 'plane geometry',
  });
  return perimeterMm;
}

function perimeter(hole: Hole): number {
  switch (hole.shape) {
    case 'round':
      return Math.PI * hole.diameterMm;
    case 'slot':
      return Math.PI * hole.widthMm + 2 * (hole.lengthMm - hole.widthMm);
    case 'square':
      return 4 * hole.sideMm;
    case 'rectangle':
      return 2 * (hole.widthMm + hole.lengthMm);
    case 'hexagon':
      return 2 * Math.sqrt(3) * hole.acrossFlatsMm;
  }
}

function dimensions(hole: Hole): NamedValue[] {
  const length = (symbol: string, meaning: string, value: number): NamedValue => ({
    symbol,
    meaning,
    kind: 'length',
    value,
  });
  switch (hole.shape) {
    case 'round':
      return [length('d', 'hole diameter', hole.diameterMm)];
    case 'slot':
      return [length('w', 'slot width', hole.widthMm), length('l', 'slot length over all', hole.lengthMm)];
    case 'square':
      return [length('a', 'side', hole.sideMm)];
    case 'rectangle':
      return [length('a', 'side', hole.widthMm), length('b', 'side', hole.lengthMm)];
    case 'hexagon':
      return [length('s', 'width across flats', hole.acrossFlatsMm)];
  }
}
