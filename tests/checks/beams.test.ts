import { describe, expect, it } from 'vitest';
import { kilogramPerPound, mmPerFoot } from '../../src/core/quantity/units.js';
import { sectionAreaMm2 } from '../../src/core/section/area.js';
import { beams } from '../../src/core/section/beam/beamTable.js';
import { sectionMassKg } from '../../src/core/section/mass.js';
import { sectionPerimeterMm } from '../../src/core/section/perimeter.js';
import { readAnySection } from '../../src/core/section/readAnySection.js';
import { expectPrinted } from '../support/printed.js';

const section = (text: string) => readAnySection(text, 'Section', 'mm').section;
const kgPerMeter = (text: string) =>
  sectionMassKg({ section: section(text), lengthMm: 1000, densityKgPerM3: 7850 });

describe('EN 10365 beams and channels (from memory): kg/m, cm²', () => {
  // The dimensions are those of an open table; the masses were typed from memory of the standard.
  it.each([
    ['IPE80', '6.00', '7.64'],
    ['IPE200', '22.4', '28.5'],
    ['IPE300', '42.2', '53.8'],
    ['IPE600', '122', '156'],
    ['HEA100', '16.7', '21.2'],
    ['HEA160', '30.4', '38.8'],
    ['HEA200', '42.3', '53.8'],
    ['HEA300', '88.3', '112.5'],
    ['HEB100', '20.4', '26.0'],
    ['HEB200', '61.3', '78.1'],
    ['HEB300', '117', '149'],
    ['HEM200', '103', '131'],
    ['UPE200', '22.8', '29.0'],
    ['UPE300', '44.4', '56.6'],
    ['UPN50', '5.59', '7.12'],
    ['UPN400', '71.8', '91.5'],
    ['IPN200', '26.2', '33.4'],
  ])('%s: %s, %s', (text, mass, area) => {
    expectPrinted(kgPerMeter(text), mass);
    expectPrinted(sectionAreaMm2(section(text)) / 100, area);
  });

  it.each([
    ['IPE200', '0.768'],
    ['HEA200', '1.136'],
    ['HEB300', '1.732'],
  ])('%s has %s m² of surface a meter', (text, surface) => {
    expectPrinted(sectionPerimeterMm(section(text)) / 1000, surface);
  });
});

describe('AISC Manual Part 1, beams, channels and pipes (from memory)', () => {
  it.each([
    ['W12X26', 7.65],
    ['W8X31', 9.13],
    ['W14X90', 26.5],
    ['W36X150', 44.3],
    ['S12X31.8', 9.31],
    ['HP12X53', 15.5],
    ['MC8X22.8', 6.7],
    ['MC18X42.7', 12.6],
    ['WT6X13', 3.82],
  ])('%s: %d in²', (text, area) => {
    expect(Math.abs(sectionAreaMm2(section(text)) / 25.4 ** 2 / area - 1)).toBeLessThan(0.005);
  });

  it.each([
    ['PIPE 1-1/2 STD', '2.72'],
    ['PIPE 2 XS', '5.03'],
    ['PIPE 4 STD', '10.8'],
    ['PIPE 6 XXS', '53.2'],
  ])('%s weighs %s lb/ft', (text, weight) => {
    const input = { section: section(text), lengthMm: mmPerFoot, densityKgPerM3: 7850 };
    expectPrinted(sectionMassKg(input) / kilogramPerPound, weight);
  });
});

describe('Universal beams and columns of BS 4-1 (from memory): kg/m, cm²', () => {
  it.each([
    ['UB 203x133x25', '25.1', '32.0'],
    ['UB 305x165x40', '40.3', '51.3'],
    ['UB 457x191x67', '67.1', '85.5'],
    ['UC 152x152x23', '23.0', '29.2'],
    ['UC 254x254x73', '73.1', '93.1'],
    ['UC 305x305x97', '96.9', '123'],
  ])('%s: %s, %s', (text, mass, area) => {
    expectPrinted(kgPerMeter(text), mass);
    expectPrinted(sectionAreaMm2(section(text)) / 100, area);
  });

  // BS 4-1 names a size by its mass in whole kg/m; the heaviest columns are rounded by up to 2 kg/m more.
  const universal = beams.filter(({ name }) => /^U[BC]/.test(name));

  it.each(universal.map((beam) => [beam.name, beam] as const))(
    '%s weighs what its name says',
    (name, beam) => {
      const named = Number(name.split('X')[2]);
      expect(Math.abs(beam.massKgPerM - named)).toBeLessThan(Math.max(0.55, 0.004 * named));
    },
  );

  it('are all of them', () => {
    expect(universal).toHaveLength(107 + 46);
  });
});

describe('Every beam of the tables against plane geometry and the density of steel', () => {
  it.each(beams.map((beam) => [beam.name, beam] as const))('%s', (_name, beam) => {
    const { depthMm: h, flangeWidthMm: b, webThicknessMm: tw, flangeThicknessMm: tf } = beam;
    const flanges = beam.form === 'tee' ? 1 : 2;
    const plates = flanges * b * tf + (h - flanges * tf) * tw;
    // Fillets add to the plates; those of old and light beams and their rounded digits differ most.
    expect(beam.areaMm2 / plates).toBeGreaterThan(0.97);
    expect(beam.areaMm2 / plates).toBeLessThan(1.1);
    const massOfArea = beam.areaMm2 * 7850e-6;
    const isLight = beam.name.startsWith('M') && beam.massKgPerM < 7;
    expect(Math.abs(beam.massKgPerM / massOfArea - 1)).toBeLessThan(isLight ? 0.07 : 0.04);
  });
});
