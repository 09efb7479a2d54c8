import { refuse } from '../inputError.js';
import { mmPer } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import type { Working } from '../working/working.js';
import { withOtherCodes } from './otherCodes.js';
import {
  aiscInchAbove,
  aiscInchRows,
  type AiscHoleRow,
  aiscMetricAbove,
  aiscMetricRows,
  anchorRodRows,
  enClearanceRows,
  enLongSlotFactor,
  isoRows,
} from './boltHoleTables.js';
import { type BoltSize, boltRow, boltValue, ownDiameter, requireSystem } from './boltSize.js';

export const holeFits = [
  'standard',
  'oversize',
  'short slot',
  'long slot',
  'anchor rod',
  'fine',
  'medium',
  'coarse',
] as const;
export type HoleFit = (typeof holeFits)[number];

export const holeCodes = ['AISC', 'EN', 'ISO 273'] as const;
export type HoleCode = (typeof holeCodes)[number];

export interface BoltHoleInput {
  bolt: BoltSize;
  fit: HoleFit;
  code: HoleCode;
}

/** A hole for a bolt: a diameter, or the width and the length over all of a slot. */
export interface BoltHole {
  widthMm: number;
  lengthMm?: number;
}

const fitsOf: Record<HoleCode, readonly HoleFit[]> = {
  AISC: ['standard', 'oversize', 'short slot', 'long slot', 'anchor rod'],
  EN: ['standard', 'oversize', 'short slot', 'long slot'],
  'ISO 273': ['fine', 'medium', 'coarse'],
};

interface HoleInOwnUnit {
  width: number;
  length?: number;
  source: string;
}

const sameSize = 0.001;

/**
 * The hole for a bolt by code and fit. Inch bolts are looked up in inch tables, metric ones in metric tables.
 *
 * Formula: by table; large sizes by the additions the table gives (AISC from 1-1/8 in and M36)
 * @param input the bolt; the fit; the code
 * @param working collects the step when given
 * @returns diameter in mm, or width and length over all in mm for a slot
 * Valid for the sizes of the tables. Throws `unknown` for a size a table does not have, with the codes that have it,
 * `invalid` for a fit the code does not have.
 * @example boltHole({ bolt: readBolt('M20', 'Bolt', 'mm'), fit: 'standard', code: 'EN' }) // { widthMm: 22 }
 * Source: AISC 360-22 Tables J3.3 and J3.3M; AISC Design Guide 1 Table 2.3; EN 1090-2 Table 11; ISO 273.
 */
export function boltHole(input: BoltHoleInput, working?: Working): BoltHole {
  requirePositive('Bolt', input.bolt.diameterMm);
  return withOtherCodes(input.code, holeCodes, (code) =>
    code === input.code
      ? holeByCode(input, working)
      : holeByCode({ ...input, code, fit: likeFit(input.fit, code) }),
  );
}

/** The usual hole of one code is called otherwise by another. */
function likeFit(fit: HoleFit, code: HoleCode): HoleFit {
  if (code === 'ISO 273') return fit === 'standard' ? 'medium' : fit;
  return fit === 'medium' ? 'standard' : fit;
}

/** The same as {@link boltHole}; its refusal of a bolt names the sizes of the table alone, no other code. */
export function holeByCode({ bolt, fit, code }: BoltHoleInput, working?: Working): BoltHole {
  if (!fitsOf[code].includes(fit)) {
    refuse('Fit', fit, `${code} has no fit '${fit}'.`, `Allowed: ${fitsOf[code].join(', ')}.`);
  }
  const { width, length, source } = find(bolt, fit, code);
  const factor = mmPer[bolt.system];
  const widthMm = width * factor;
  const hole: BoltHole = length === undefined ? { widthMm } : { widthMm, lengthMm: length * factor };
  const report = (title: string, symbol: string, meaning: string, value: number) =>
    working?.step({
      title,
      formula: `${symbol} by table`,
      values: [boltValue(bolt), { symbol: '', meaning: 'fit', kind: 'text', value: fit }],
      result: { symbol, meaning, kind: 'length', value },
      source,
    });
  if (hole.lengthMm !== undefined) report('Slot length', 'l', 'slot length over all', hole.lengthMm);
  report('Hole for a bolt', 'dh', length === undefined ? 'hole diameter' : 'slot width', widthMm);
  return hole;
}

function find(bolt: BoltSize, fit: HoleFit, code: HoleCode): HoleInOwnUnit {
  if (code === 'ISO 273') return isoHole(bolt, fit);
  if (code === 'EN') return enHole(bolt, fit);
  return fit === 'anchor rod' ? anchorRodHole(bolt) : aiscHole(bolt, fit);
}

function aiscHole(bolt: BoltSize, fit: HoleFit): HoleInOwnUnit {
  const inch = bolt.system === 'in';
  const source = inch ? 'AISC 360-22 Table J3.3 (from memory)' : 'AISC 360-22 Table J3.3M';
  const above = inch ? aiscInchAbove : aiscMetricAbove;
  const d = ownDiameter(bolt);
  const row =
    d > above.from - sameSize
      ? aboveRow(d, above)
      : boltRow(
          bolt,
          inch ? aiscInchRows : aiscMetricRows,
          source,
          inch ? ', 1-1/8 and above' : ', M36 and above',
        );
  if (fit === 'standard' || fit === 'oversize') return { width: row[fit], source };
  const [width, length] = fit === 'short slot' ? row.shortSlot : row.longSlot;
  return { width, length, source };
}

function aboveRow(d: number, above: typeof aiscInchAbove): AiscHoleRow {
  const standard = d + above.standard;
  return {
    diameter: d,
    standard,
    oversize: d + above.oversize,
    shortSlot: [standard, d + above.shortSlot],
    longSlot: [standard, above.longSlotFactor * d],
  };
}

function anchorRodHole(bolt: BoltSize): HoleInOwnUnit {
  const source = 'AISC Design Guide 1, second edition (2006), Table 2.3';
  requireSystem(bolt, 'in', source);
  return { width: boltRow(bolt, anchorRodRows, source).hole, source };
}

function enHole(bolt: BoltSize, fit: HoleFit): HoleInOwnUnit {
  const source = 'EN 1090-2 Table 11';
  requireSystem(bolt, 'mm', source);
  const row = boltRow(bolt, enClearanceRows, source);
  const width = row.diameter + (fit === 'oversize' ? row.oversize : row.normal);
  if (fit === 'short slot') return { width, length: row.diameter + row.shortSlot, source };
  if (fit === 'long slot') return { width, length: enLongSlotFactor * row.diameter, source };
  return { width, source };
}

function isoHole(bolt: BoltSize, fit: HoleFit): HoleInOwnUnit {
  const source = 'ISO 273 (from memory)';
  requireSystem(bolt, 'mm', source);
  const row = boltRow(bolt, isoRows, source);
  return { width: row[fit as 'fine' | 'medium' | 'coarse'], source };
}
