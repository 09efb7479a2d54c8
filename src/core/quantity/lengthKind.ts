/**
 * The range in which a dimension of each kind is believed, in mm. A reading outside it is a mistake in the
 * unit or in typing, never a part. Common practice, no source.
 */
export interface LengthKind {
  leastMm: number;
  greatestMm: number;
  /** Dimensions smaller than any bar are typed as fractions, which a spreadsheet may have turned into a date. */
  fractionProne: boolean;
}

export const lengthKinds = {
  thickness: { leastMm: 25.4 / 64, greatestMm: 101.6, fractionProne: true },
  hole: { leastMm: 25.4 / 16, greatestMm: 304.8, fractionProne: true },
  bolt: { leastMm: 25.4 / 8, greatestMm: 101.6, fractionProne: true },
  leg: { leastMm: 25.4 / 4, greatestMm: 304.8, fractionProne: true },
  width: { leastMm: 25.4 / 8, greatestMm: 160 * 25.4, fractionProne: true },
  distance: { leastMm: 25.4 / 64, greatestMm: 800 * 25.4, fractionProne: true },
  length: { leastMm: 25.4 / 16, greatestMm: 4000 * 25.4, fractionProne: false },
} as const satisfies Record<string, LengthKind>;

export type LengthKindName = keyof typeof lengthKinds;
