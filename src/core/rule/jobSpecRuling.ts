import { atMost } from '../atMost.js';
import type { Grade } from '../material/grade.js';
import { type SteelGroup, yieldOfGrade } from '../material/yieldStrength.js';
import { mmPerInch } from '../quantity/units.js';
import { lengthValue, stressValue, textValue } from '../working/namedValue.js';
import type { NamedValue } from '../working/working.js';
import type { PunchedHoleInput } from './jobSpec.js';

const reamMm = 2;
const reamOverMm = 3;
/** From this thickness on galvanized steel may crack where it was punched or bent. Common practice, no source. */
export const galvanizedFromMm = (3 / 4) * mmPerInch;
/** AASHTO LRFD Bridge Construction Specifications, punched holes (from memory), in. */
const bridgeThicknessIn: Record<SteelGroup, number> = {
  carbon: 3 / 4,
  'high strength': 5 / 8,
  'quenched and tempered': 1 / 2,
};
const asGreatestYieldMPa = 360;
const asProduct = 5600;

/** What a rule found: a reason where the hole may not be punched, and how it was found. */
export interface Ruling {
  reason?: string;
  instead?: 'punch 2 mm under and ream';
  formula: string;
  values: NamedValue[];
  source: string;
}

/** The rule of a specification, applied to one hole. Sources stand in each. */
export function rulingOf(input: PunchedHoleInput): Ruling {
  switch (input.spec) {
    case 'none':
      return { formula: 'no rule', values: [], source: 'no specification is set for the job' };
    case 'AISC older rule':
      return boltRuling(input, (1 / 8) * mmPerInch, '1/8 in', 'AISC 360, older editions (from memory)');
    case 'CSA S16':
      return boltRuling(input, 4, '4 mm', 'CSA S16, punched holes (from memory)');
    case 'AS 4100':
      return asRuling(input);
    case 'AASHTO':
      return bridgeRuling(input);
    case 'galvanized':
      return galvanizedRuling(input);
    case 'seismic or fatigue':
      return {
        reason: 'seismic or fatigue work: ask the engineer; drill or ream',
        formula: 'never punched to full size',
        values: [],
        source: 'common practice',
      };
    default:
      return enRuling(input, input.spec === 'EN 1090-2 EXC3' || input.spec === 'EN 1090-2 EXC4');
  }
}

function enRuling({ leastHoleMm, thicknessMm, spec }: PunchedHoleInput, reamed: boolean): Ruling {
  const ruling = {
    formula: reamed ? 't ≤ d, and reamed by 2 mm over 3 mm' : 't ≤ d',
    values: [thickness(thicknessMm), lengthValue('d', 'least dimension of the hole', leastHoleMm)],
    source: 'EN 1090-2, 6.6.3, punching (from memory)',
  };
  if (!atMost(thicknessMm, leastHoleMm)) {
    return { ...ruling, reason: `${spec}: the material is thicker than the hole is wide` };
  }
  if (!reamed || atMost(thicknessMm, reamOverMm)) return ruling;
  const reason = `${spec}: over 3 mm a hole is punched at least 2 mm under and reamed`;
  return atMost(thicknessMm, leastHoleMm - reamMm)
    ? { ...ruling, reason, instead: 'punch 2 mm under and ream' }
    : { ...ruling, reason: `${reason}, and the smaller hole would be under the thickness` };
}

function boltRuling(input: PunchedHoleInput, moreMm: number, more: string, source: string): Ruling {
  const { thicknessMm, leastHoleMm } = input;
  const boltMm = input.boltMm ?? leastHoleMm - mmPerInch / 16;
  const meaning = input.boltMm === undefined ? 'bolt, taken as the hole less 1/16 in' : 'bolt';
  return {
    formula: `t ≤ d + ${more}`,
    values: [thickness(thicknessMm), lengthValue('d', meaning, boltMm)],
    source,
    ...(atMost(thicknessMm, boltMm + moreMm)
      ? {}
      : { reason: `${input.spec}: the material is thicker than the bolt and ${more}` }),
  };
}

function asRuling({ thicknessMm, grade }: PunchedHoleInput): Ruling {
  const source = 'AS 4100, 14.3.5 (from memory)';
  const formula = 'fy ≤ 360 MPa and t ≤ 5600 / fy';
  const known = yieldOfGrade(grade.name);
  if (!known) return yieldUnknown(grade, formula, source);
  const { yieldMPa } = known;
  const values = [thickness(thicknessMm), stressValue('fy', `yield strength of ${grade.name}`, yieldMPa)];
  if (!atMost(yieldMPa, asGreatestYieldMPa)) {
    return {
      reason: 'AS 4100: steel over 360 MPa of yield strength is not punched',
      formula,
      values,
      source,
    };
  }
  const within = atMost(thicknessMm, asProduct / yieldMPa);
  const reason = 'AS 4100: the material is thicker than 5600 mm over its yield strength in MPa';
  return { formula, values, source, ...(within ? {} : { reason }) };
}

function bridgeRuling({ thicknessMm, grade }: PunchedHoleInput): Ruling {
  const source = 'AASHTO LRFD Bridge Construction Specifications, punched holes (from memory)';
  const formula = 't ≤ 3/4 in carbon, 5/8 in high strength, 1/2 in quenched and tempered';
  const known = yieldOfGrade(grade.name);
  if (!known) return yieldUnknown(grade, formula, source);
  const values = [thickness(thicknessMm), textValue('steel', grade.name, known.group)];
  const within = atMost(thicknessMm, bridgeThicknessIn[known.group] * mmPerInch);
  const reason = `AASHTO: ${known.group} steel of this thickness is not punched to full size`;
  return { formula, values, source, ...(within ? {} : { reason }) };
}

function yieldUnknown(grade: Grade, formula: string, source: string): Ruling {
  const reason = `the rule needs to know the steel, and ${grade.name} is not a structural steel in the table`;
  return { reason, formula, values: [textValue('steel', 'grade', grade.name)], source };
}

function galvanizedRuling({ thicknessMm }: PunchedHoleInput): Ruling {
  const thick = atMost(galvanizedFromMm, thicknessMm);
  return {
    formula: 't < 3/4 in',
    values: [thickness(thicknessMm)],
    source: 'common practice',
    ...(thick
      ? { reason: 'galvanized steel of 3/4 in or more may crack: ask the engineer; drill or ream' }
      : {}),
  };
}

function thickness(value: number): NamedValue {
  return lengthValue('t', 'thickness', value);
}
