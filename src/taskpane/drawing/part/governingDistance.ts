import type { Finding } from '../../../core/check/finding.js';

export const distanceKinds = ['edge distance', 'end distance', 'far end distance', 'pitch', 'gage'] as const;
export type DistanceKind = (typeof distanceKinds)[number];

/** The distance that decides a row, in the words of its finding. */
export interface GoverningDistance {
  /** `Hole`, `Hole 2`. */
  group: string;
  kind: DistanceKind;
  /** As the row gives it, and the least it must be: `1` and `1-1/4`. */
  given: string;
  least: string;
}

const sentence =
  /^(Hole(?: \d)?): (edge distance|(?:far )?end distance|pitch|gage) (\S+) (?:in|mm) is under (\S+) (?:in|mm) \(/;

/** The worst finding that is about a distance, where a distance decides the row; findings come worst first. */
export function governingDistance(findings: readonly Finding[]): GoverningDistance | undefined {
  const [worst] = findings;
  const found = sentence.exec(worst?.note ?? '');
  if (!found) return undefined;
  const [, group = '', kind, given = '', least = ''] = found;
  const known = distanceKinds.find((each) => each === kind);
  return known && { group, kind: known, given, least };
}
