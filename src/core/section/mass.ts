import { requirePositive } from '../requireRange.js';
import type { Working } from '../working/working.js';
import { sectionAreaMm2 } from './area.js';
import { channelSource } from './channelTable.js';
import type { BeamSection } from './beam/beamSection.js';
import type { AnySection, ChannelSection } from './section.js';

const steelDensityKgPerM3 = 7850;

/**
 * The mass of a piece of a section.
 *
 * Formula: m = A · L · ρ; a channel or beam m = m' · L · ρ / 7850 with m' its own mass per length
 * @param input the section, length L in mm, density ρ in kg/m³
 * @param working collects the steps when given
 * @returns mass in kg
 * Valid for positive lengths and densities; throws `invalid` otherwise.
 * @example sectionMassKg({ section: readSection('FB 10x50', 'Section', 'mm').section, lengthMm: 1000, densityKgPerM3: 7850 }) // 3.925
 * Source: EN 10058 to 10060, EN 10056-1 (density of steel 7850 kg/m³); channels and beams: AISC Manual Part 1,
 *   EN 10365.
 */
export function sectionMassKg(
  input: { section: AnySection; lengthMm: number; densityKgPerM3: number },
  working?: Working,
): number {
  const { section, lengthMm, densityKgPerM3 } = input;
  requirePositive('Length', lengthMm);
  requirePositive('Density', densityKgPerM3);
  if (section.kind === 'channel' || section.kind === 'beam')
    return tabledMass(section, lengthMm, densityKgPerM3, working);
  const areaMm2 = sectionAreaMm2(section, working);
  const massKg = areaMm2 * lengthMm * densityKgPerM3 * 1e-9;
  working?.step({
    title: `Mass of ${section.designation}`,
    formula: 'm = A · L · ρ',
    values: [
      { symbol: 'A', meaning: 'section area', kind: 'area', value: areaMm2 },
      { symbol: 'L', meaning: 'length', kind: 'length', value: lengthMm },
      { symbol: 'ρ', meaning: 'density in kg/m³', kind: 'ratio', value: densityKgPerM3 },
    ],
    result: { symbol: 'm', meaning: 'mass', kind: 'mass', value: massKg },
    source: 'plane geometry; density of the grade',
  });
  return massKg;
}

function tabledMass(
  section: ChannelSection | BeamSection,
  lengthMm: number,
  densityKgPerM3: number,
  working?: Working,
): number {
  const share = densityKgPerM3 / steelDensityKgPerM3;
  const massKg = section.massKgPerM * (lengthMm / 1000) * share;
  requirePositive('Mass', massKg);
  working?.step({
    title: `Mass of ${section.designation}`,
    formula: share === 1 ? "m = m' · L" : "m = m' · L · ρ / 7850 kg/m³",
    values: [
      { symbol: "m'", meaning: 'mass per length, steel', kind: 'massPerLength', value: section.massKgPerM },
      { symbol: 'L', meaning: 'length', kind: 'length', value: lengthMm },
      { symbol: 'ρ', meaning: 'density in kg/m³', kind: 'ratio', value: densityKgPerM3 },
    ],
    result: { symbol: 'm', meaning: 'mass', kind: 'mass', value: massKg },
    source: section.kind === 'beam' ? section.standard : channelSource(section),
  });
  return massKg;
}
