// The text of src/core/quantity/unitFactors.ts, its numbers read from the unit library.
import { create, createUnitDependencies, unitDependencies } from 'mathjs';

const math = create({ ...unitDependencies, ...createUnitDependencies });
// The unit library has neither of these; both are defined by units it has (NIST SP 811, Appendix B).
math.createUnit('uston', '2000 lbf');
math.createUnit('kippersquareinch', '1000 lbf/in^2');

const factor = (of, to) => math.unit(1, of).toNumber(to);

const factors = {
  mmPerInch: factor('in', 'mm'),
  mmPerFoot: factor('ft', 'mm'),
  newtonPerUsTon: factor('uston', 'N'),
  // The tonne-force is the weight of 1000 kg at standard gravity, which the library holds as kgf's own.
  newtonPerTonneForce: 1000 * factor('kgf', 'N'),
  newtonPerKilonewton: factor('kN', 'N'),
  megapascalPerKsi: factor('kippersquareinch', 'MPa'),
  kilogramPerPound: factor('lbm', 'kg'),
  radianPerDegree: factor('deg', 'rad'),
};

export function unitFactorsSource() {
  return `// Written by \`npm run units\`; a test compares. Do not edit.

/**
 * Conversion factors between the units a shop uses and the core's own (mm, N, MPa, kg, s, rad), read from the unit
 * library (mathjs). Source: NIST SP 811, Appendix B (from memory).
 */
${Object.entries(factors)
  .map(([name, value]) => `export const ${name} = ${value};`)
  .join('\n')}
`;
}
