import { kilogramPerPound, mmPerFoot, mmPerInch } from '../../quantity/units.js';
import type { BeamSection } from './beamSection.js';
import { europeanBeams } from './europeanBeams.js';
import { heavyWideFlanges } from './heavyWideFlanges.js';
import { bearingPiles, miscellaneousBeams, standardBeams } from './otherBeams.js';
import { taperedBeams } from './taperedBeams.js';
import { universalBeams } from './universalBeams.js';
import { wideFlanges } from './wideFlanges.js';
import { wordTable } from '../../quantity/wordTable.js';

const steelKgPerMm3 = 7850e-9;
/** What four fillets of radius 1 add to the corners between web and flanges. */
const fourFillets = 4 - Math.PI;
/** The families that tees are cut from, and what their tees are called. */
const teesOf: Readonly<Record<string, string>> = wordTable({ W: 'WT', S: 'ST', M: 'MT' });

/** Lighter beams of that family have no tees in the table, lb/ft. */
const leastTeeOfM = 4.1;

/** The rows of a table of text: a name and its numbers. */
function rowsOf(table: string): { name: string; numbers: number[] }[] {
  return table
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', ...numbers] = line.split(' ');
      return { name, numbers: numbers.map(Number) };
    });
}

/** A beam of the American tables: its weight in lb/ft is the second number of its name. */
function americanBeam(name: string, [d = 0, bf = 0, tw = 0, tf = 0, area = 0]: number[]): BeamSection {
  const poundPerFoot = Number(name.split('X')[1]);
  return {
    kind: 'beam',
    designation: name,
    name,
    standard: 'AISC',
    form: 'I',
    depthMm: d * mmPerInch,
    flangeWidthMm: bf * mmPerInch,
    webThicknessMm: tw * mmPerInch,
    flangeThicknessMm: tf * mmPerInch,
    rootRadiusMm: 0,
    areaMm2: area * mmPerInch ** 2,
    massKgPerM: (poundPerFoot * kilogramPerPound) / (mmPerFoot / 1000),
  };
}

/** The tee cut from the middle of a beam: half its name, depth, area and mass; none where it has no tee. */
function teeOf(beam: BeamSection): BeamSection[] {
  const [, letter = '', depth, weight] = /^([A-Z]+)([\d.]+)X([\d.]+)$/.exec(beam.name) ?? [];
  const family = teesOf[letter];
  if (family === undefined || (letter === 'M' && Number(weight) < leastTeeOfM)) return [];
  const name = `${family}${Number(depth) / 2}X${halfWeight(Number(weight))}`;
  const half = { depthMm: beam.depthMm / 2, areaMm2: beam.areaMm2 / 2, massKgPerM: beam.massKgPerM / 2 };
  return [{ ...beam, ...half, designation: name, name, form: 'tee' }];
}

/** Names of tees give their weight to two places: ST3X8.6 is half of S6X17.25. */
function halfWeight(weight: number): number {
  const half = weight / 2;
  return Number.isInteger(half * 100) ? half : Number(half.toFixed(1));
}

function europeanBeam(
  name: string,
  areaMm2: number,
  [h = 0, b = 0, tw = 0, tf = 0, r = 0]: number[],
): BeamSection {
  return {
    kind: 'beam',
    designation: name,
    name,
    standard: 'EN 10365',
    form: 'I',
    depthMm: h,
    flangeWidthMm: b,
    webThicknessMm: tw,
    flangeThicknessMm: tf,
    rootRadiusMm: r,
    areaMm2,
    massKgPerM: areaMm2 * 1000 * steelKgPerMm3,
  };
}

/** Parallel flanges: two of them, the web between, four fillets. */
function parallelArea([h = 0, b = 0, tw = 0, tf = 0, r = 0]: number[]): number {
  return 2 * b * tf + (h - 2 * tf) * tw + fourFillets * r ** 2;
}

const american = [wideFlanges, heavyWideFlanges, standardBeams, bearingPiles, miscellaneousBeams]
  .flatMap(rowsOf)
  .map(({ name, numbers }) => americanBeam(name, numbers));

/** Every beam and tee cut from beams that the library knows, by its standard name. */
export const beams: readonly BeamSection[] = [
  ...american,
  ...american.flatMap(teeOf),
  ...[europeanBeams, universalBeams]
    .flatMap(rowsOf)
    .map(({ name, numbers }) => europeanBeam(name, parallelArea(numbers), numbers)),
  ...rowsOf(taperedBeams).map(({ name, numbers }) => {
    const [h = 0, b = 0, tw = 0, tf = 0, areaCm2 = 0] = numbers;
    return europeanBeam(name, areaCm2 * 100, [h, b, tw, tf]);
  }),
];
