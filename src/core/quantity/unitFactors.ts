// Written by `npm run units`; a test compares. Do not edit.

/**
 * Conversion factors between the units a shop uses and the core's own (mm, N, MPa, kg, s, rad), read from the unit
 * library (mathjs). Source: NIST SP 811, Appendix B (from memory).
 */
export const mmPerInch = 25.4;
export const mmPerFoot = 304.8;
export const newtonPerUsTon = 8896.443230521;
export const newtonPerTonneForce = 9806.65;
export const newtonPerKilonewton = 1000;
export const megapascalPerKsi = 6.894757293168361;
export const kilogramPerPound = 0.45359237;
export const radianPerDegree = 0.017453292519943295;
