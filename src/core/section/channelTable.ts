import { kilogramPerPound, mmPerFoot, mmPerInch } from '../quantity/units.js';
import { miscChannels } from './beam/miscChannels.js';
import type { ChannelSection } from './section.js';

/** American standard channels, in and in²: the weight in lb/ft is the second number of the name. */
interface InchRow {
  depthIn: number;
  poundPerFoot: number;
  flangeWidthIn: number;
  webIn: number;
  flangeIn: number;
  areaIn2: number;
}

/** European tapered-flange channels, mm, cm² and kg/m. */
interface UpnRow {
  depthMm: number;
  flangeWidthMm: number;
  webMm: number;
  flangeMm: number;
  areaCm2: number;
  kilogramPerMeter: number;
}

/**
 * Source: AISC Steel Construction Manual, Part 1, C-shapes. Checked against a reprint: C3X4.1, C4X5.4, C5X6.7, C6X8.2,
 * C6X10.5, C8X11.5, C8X13.75, C10X15.3, C12X20.7, C15X33.9, and the areas of C7X9.8, C10X20, C15X50. The other
 * dimensions of those three and all other rows are from memory, but C3X3.5, C4X4.5 and C4X6.25: AISC Shapes Database
 * 15.0, as in the open repository buddyd16/Structural-Engineering.
 */
// prettier-ignore
const inchRows: readonly InchRow[] = [
  { depthIn: 3, poundPerFoot: 3.5, flangeWidthIn: 1.37, webIn: 0.132, flangeIn: 0.273, areaIn2: 1.09 },
  { depthIn: 3, poundPerFoot: 4.1, flangeWidthIn: 1.41, webIn: 0.17, flangeIn: 0.273, areaIn2: 1.2 },
  { depthIn: 3, poundPerFoot: 5, flangeWidthIn: 1.5, webIn: 0.258, flangeIn: 0.273, areaIn2: 1.47 },
  { depthIn: 3, poundPerFoot: 6, flangeWidthIn: 1.6, webIn: 0.356, flangeIn: 0.273, areaIn2: 1.76 },
  { depthIn: 4, poundPerFoot: 4.5, flangeWidthIn: 1.52, webIn: 0.125, flangeIn: 0.296, areaIn2: 1.34 },
  { depthIn: 4, poundPerFoot: 6.25, flangeWidthIn: 1.65, webIn: 0.247, flangeIn: 0.296, areaIn2: 1.84 },
  { depthIn: 4, poundPerFoot: 5.4, flangeWidthIn: 1.58, webIn: 0.184, flangeIn: 0.296, areaIn2: 1.58 },
  { depthIn: 4, poundPerFoot: 7.25, flangeWidthIn: 1.72, webIn: 0.321, flangeIn: 0.296, areaIn2: 2.13 },
  { depthIn: 5, poundPerFoot: 6.7, flangeWidthIn: 1.75, webIn: 0.19, flangeIn: 0.32, areaIn2: 1.97 },
  { depthIn: 5, poundPerFoot: 9, flangeWidthIn: 1.89, webIn: 0.325, flangeIn: 0.32, areaIn2: 2.64 },
  { depthIn: 6, poundPerFoot: 8.2, flangeWidthIn: 1.92, webIn: 0.2, flangeIn: 0.343, areaIn2: 2.39 },
  { depthIn: 6, poundPerFoot: 10.5, flangeWidthIn: 2.03, webIn: 0.314, flangeIn: 0.343, areaIn2: 3.07 },
  { depthIn: 6, poundPerFoot: 13, flangeWidthIn: 2.16, webIn: 0.437, flangeIn: 0.343, areaIn2: 3.82 },
  { depthIn: 7, poundPerFoot: 9.8, flangeWidthIn: 2.09, webIn: 0.21, flangeIn: 0.366, areaIn2: 2.87 },
  { depthIn: 7, poundPerFoot: 12.25, flangeWidthIn: 2.19, webIn: 0.314, flangeIn: 0.366, areaIn2: 3.59 },
  { depthIn: 7, poundPerFoot: 14.75, flangeWidthIn: 2.3, webIn: 0.419, flangeIn: 0.366, areaIn2: 4.33 },
  { depthIn: 8, poundPerFoot: 11.5, flangeWidthIn: 2.26, webIn: 0.22, flangeIn: 0.39, areaIn2: 3.37 },
  { depthIn: 8, poundPerFoot: 13.75, flangeWidthIn: 2.34, webIn: 0.303, flangeIn: 0.39, areaIn2: 4.03 },
  { depthIn: 8, poundPerFoot: 18.75, flangeWidthIn: 2.53, webIn: 0.487, flangeIn: 0.39, areaIn2: 5.51 },
  { depthIn: 9, poundPerFoot: 13.4, flangeWidthIn: 2.43, webIn: 0.233, flangeIn: 0.413, areaIn2: 3.94 },
  { depthIn: 9, poundPerFoot: 15, flangeWidthIn: 2.49, webIn: 0.285, flangeIn: 0.413, areaIn2: 4.41 },
  { depthIn: 9, poundPerFoot: 20, flangeWidthIn: 2.65, webIn: 0.448, flangeIn: 0.413, areaIn2: 5.87 },
  { depthIn: 10, poundPerFoot: 15.3, flangeWidthIn: 2.6, webIn: 0.24, flangeIn: 0.436, areaIn2: 4.48 },
  { depthIn: 10, poundPerFoot: 20, flangeWidthIn: 2.74, webIn: 0.379, flangeIn: 0.436, areaIn2: 5.88 },
  { depthIn: 10, poundPerFoot: 25, flangeWidthIn: 2.89, webIn: 0.526, flangeIn: 0.436, areaIn2: 7.35 },
  { depthIn: 10, poundPerFoot: 30, flangeWidthIn: 3.03, webIn: 0.673, flangeIn: 0.436, areaIn2: 8.82 },
  { depthIn: 12, poundPerFoot: 20.7, flangeWidthIn: 2.94, webIn: 0.282, flangeIn: 0.501, areaIn2: 6.08 },
  { depthIn: 12, poundPerFoot: 25, flangeWidthIn: 3.05, webIn: 0.387, flangeIn: 0.501, areaIn2: 7.34 },
  { depthIn: 12, poundPerFoot: 30, flangeWidthIn: 3.17, webIn: 0.51, flangeIn: 0.501, areaIn2: 8.81 },
  { depthIn: 15, poundPerFoot: 33.9, flangeWidthIn: 3.4, webIn: 0.4, flangeIn: 0.65, areaIn2: 10.0 },
  { depthIn: 15, poundPerFoot: 40, flangeWidthIn: 3.52, webIn: 0.52, flangeIn: 0.65, areaIn2: 11.8 },
  { depthIn: 15, poundPerFoot: 50, flangeWidthIn: 3.72, webIn: 0.716, flangeIn: 0.65, areaIn2: 14.7 },
];

/**
 * Source: EN 10365, UPN. The rows from 80 to 200 are checked against a reprint; the dimensions of the others against the
 * open repository fib-international/structuralcodes, their areas and masses are from memory.
 */
// prettier-ignore
const upnRows: readonly UpnRow[] = [
  { depthMm: 50, flangeWidthMm: 38, webMm: 5, flangeMm: 7, areaCm2: 7.12, kilogramPerMeter: 5.59 },
  { depthMm: 65, flangeWidthMm: 42, webMm: 5.5, flangeMm: 7.5, areaCm2: 9.03, kilogramPerMeter: 7.09 },
  { depthMm: 80, flangeWidthMm: 45, webMm: 6, flangeMm: 8, areaCm2: 11, kilogramPerMeter: 8.64 },
  { depthMm: 100, flangeWidthMm: 50, webMm: 6, flangeMm: 8.5, areaCm2: 13.5, kilogramPerMeter: 10.6 },
  { depthMm: 120, flangeWidthMm: 55, webMm: 7, flangeMm: 9, areaCm2: 17, kilogramPerMeter: 13.4 },
  { depthMm: 140, flangeWidthMm: 60, webMm: 7, flangeMm: 10, areaCm2: 20.4, kilogramPerMeter: 16 },
  { depthMm: 160, flangeWidthMm: 65, webMm: 7.5, flangeMm: 10.5, areaCm2: 24, kilogramPerMeter: 18.8 },
  { depthMm: 180, flangeWidthMm: 70, webMm: 8, flangeMm: 11, areaCm2: 28, kilogramPerMeter: 22 },
  { depthMm: 200, flangeWidthMm: 75, webMm: 8.5, flangeMm: 11.5, areaCm2: 32.2, kilogramPerMeter: 25.3 },
  { depthMm: 220, flangeWidthMm: 80, webMm: 9, flangeMm: 12.5, areaCm2: 37.4, kilogramPerMeter: 29.4 },
  { depthMm: 240, flangeWidthMm: 85, webMm: 9.5, flangeMm: 13, areaCm2: 42.3, kilogramPerMeter: 33.2 },
  { depthMm: 260, flangeWidthMm: 90, webMm: 10, flangeMm: 14, areaCm2: 48.3, kilogramPerMeter: 37.9 },
  { depthMm: 280, flangeWidthMm: 95, webMm: 10, flangeMm: 15, areaCm2: 53.3, kilogramPerMeter: 41.8 },
  { depthMm: 300, flangeWidthMm: 100, webMm: 10, flangeMm: 16, areaCm2: 58.8, kilogramPerMeter: 46.2 },
  { depthMm: 320, flangeWidthMm: 100, webMm: 14, flangeMm: 17.5, areaCm2: 75.8, kilogramPerMeter: 59.5 },
  { depthMm: 350, flangeWidthMm: 100, webMm: 14, flangeMm: 16, areaCm2: 77.3, kilogramPerMeter: 60.6 },
  { depthMm: 380, flangeWidthMm: 102, webMm: 13.5, flangeMm: 16, areaCm2: 80.4, kilogramPerMeter: 63.1 },
  { depthMm: 400, flangeWidthMm: 110, webMm: 14, flangeMm: 18, areaCm2: 91.5, kilogramPerMeter: 71.8 },
];

/**
 * Source: EN 10365, UPE: depth, width, web, flange, root radius (mm), as in the open repository
 * fib-international/structuralcodes, `structuralcodes/geometry/profiles/_upe.py`.
 */
// prettier-ignore
const upeRows: readonly (readonly [number, number, number, number, number])[] = [
  [80, 50, 4, 7, 10], [100, 55, 4.5, 7.5, 10], [120, 60, 5, 8, 12], [140, 65, 5, 9, 12], [160, 70, 5.5, 9.5, 12],
  [180, 75, 5.5, 10.5, 12], [200, 80, 6, 11, 13], [220, 85, 6.5, 12, 13], [240, 90, 7, 12.5, 15],
  [270, 95, 7.5, 13.5, 15], [300, 100, 9.5, 15, 15], [330, 105, 11, 16, 18], [360, 110, 12, 17, 18],
  [400, 115, 13.5, 18, 18],
];

/** Flanges of US channels gain 2 in 12 toward the web; of UPN 8%, over 300 mm 5% (EN 10279, from memory). */
const usSlope = 1 / 6;
const upnSlope = 0.08;
const deepUpnSlope = 0.05;
const deepUpnOverMm = 300;
/** What two fillets of radius 1 add to the corners between web and flanges. */
const twoFillets = 2 - Math.PI / 2;
const steelKgPerMm3 = 7850e-9;

function inchChannel(row: InchRow, family = 'C'): ChannelSection {
  const name = `${family}${row.depthIn}X${row.poundPerFoot}`;
  return {
    kind: 'channel',
    designation: name,
    name,
    depthMm: row.depthIn * mmPerInch,
    flangeWidthMm: row.flangeWidthIn * mmPerInch,
    webThicknessMm: row.webIn * mmPerInch,
    flangeThicknessMm: row.flangeIn * mmPerInch,
    areaMm2: row.areaIn2 * mmPerInch ** 2,
    massKgPerM: (row.poundPerFoot * kilogramPerPound) / (mmPerFoot / 1000),
    flangeSlope: usSlope,
    flangeNominalAtMm: ((row.flangeWidthIn + row.webIn) / 2) * mmPerInch,
  };
}

function upnChannel(row: UpnRow): ChannelSection {
  const isDeep = row.depthMm > deepUpnOverMm;
  const name = `UPN${row.depthMm}`;
  return {
    kind: 'channel',
    designation: name,
    name,
    depthMm: row.depthMm,
    flangeWidthMm: row.flangeWidthMm,
    webThicknessMm: row.webMm,
    flangeThicknessMm: row.flangeMm,
    areaMm2: row.areaCm2 * 100,
    massKgPerM: row.kilogramPerMeter,
    flangeSlope: isDeep ? deepUpnSlope : upnSlope,
    flangeNominalAtMm: isDeep ? (row.flangeWidthMm + row.webMm) / 2 : row.flangeWidthMm / 2,
  };
}

function upeChannel([depthMm, widthMm, webMm, flangeMm, r]: (typeof upeRows)[number]): ChannelSection {
  const name = `UPE${depthMm}`;
  const areaMm2 = 2 * widthMm * flangeMm + (depthMm - 2 * flangeMm) * webMm + twoFillets * r ** 2;
  return {
    kind: 'channel',
    designation: name,
    name,
    depthMm,
    flangeWidthMm: widthMm,
    webThicknessMm: webMm,
    flangeThicknessMm: flangeMm,
    areaMm2,
    massKgPerM: areaMm2 * 1000 * steelKgPerMm3,
    flangeSlope: 0,
    flangeNominalAtMm: widthMm / 2,
  };
}

/** The rows of the American miscellaneous channels; their flanges are taken to taper as those of C-shapes do. */
const miscRows = miscChannels
  .trim()
  .split('\n')
  .map((line): InchRow => {
    const [name = '', ...numbers] = line.split(' ');
    const [depthIn = 0, flangeWidthIn = 0, webIn = 0, flangeIn = 0, areaIn2 = 0] = numbers.map(Number);
    return { depthIn, poundPerFoot: Number(name.split('X')[1]), flangeWidthIn, webIn, flangeIn, areaIn2 };
  });

/** The table that a channel is in, for the source of its numbers. */
export function channelSource({ name }: ChannelSection): string {
  return name.startsWith('UP') ? 'EN 10365' : 'AISC Steel Construction Manual, Part 1';
}

/** Every channel the library knows, by its standard name. */
export const channels: readonly ChannelSection[] = [
  ...inchRows.map((row) => inchChannel(row)),
  ...miscRows.map((row) => inchChannel(row, 'MC')),
  ...upnRows.map(upnChannel),
  ...upeRows.map(upeChannel),
];
