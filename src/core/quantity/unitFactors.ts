import { create, createUnitDependencies, type FactoryFunctionMap, unitDependencies } from 'mathjs';

const math = create({ ...unitDependencies, ...createUnitDependencies } as FactoryFunctionMap);
// The unit library has neither of these; both are defined by units it has (NIST SP 811, Appendix B).
math.createUnit('uston', '2000 lbf');
math.createUnit('kippersquareinch', '1000 lbf/in^2');

function factor(of: string, to: string): number {
  return math.unit(1, of).toNumber(to);
}

/**
 * Conversion factors between the units a shop uses and the core's own (mm, N, MPa, kg, s, rad), read once from
 * the unit library. Only numbers may be exported: bundles hold their values instead of the library.
 * Source: NIST SP 811, Appendix B (from memory).
 */
export const mmPerInch = factor('in', 'mm');
export const mmPerFoot = factor('ft', 'mm');
export const newtonPerUsTon = factor('uston', 'N');
/** The tonne-force is the weight of 1000 kg at standard gravity, which the library holds as kgf's own. */
export const newtonPerTonneForce = 1000 * factor('kgf', 'N');
export const newtonPerKilonewton = factor('kN', 'N');
export const megapascalPerKsi = factor('kippersquareinch', 'MPa');
export const kilogramPerPound = factor('lbm', 'kg');
export const radianPerDegree = factor('deg', 'rad');
