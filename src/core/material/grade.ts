/** A material by the numbers the calculations need. What no source states is left out, never zero. */
export interface Grade {
  name: string;
  family: 'steel' | 'stainless' | 'aluminum' | 'brass' | 'copper';
  /** Lower bound of the tensile strength in the product standard. */
  tensileMinMPa?: number;
  /** Upper bound: bars come in stronger than the minimum, so forces are taken from this one. */
  tensileUpperMPa?: number;
  /** Upper bound under 3 mm, where the standard gives thin products another one. */
  thinTensileUpperMPa?: number;
  /** Shear strength, where it is stated instead of derived. */
  shearMPa?: number;
  densityKgPerM3: number;
  source: string;
}
