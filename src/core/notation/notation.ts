/** What a text of a list or of the Shop sheet can say. */
export const notationKinds = [
  'section',
  'grade',
  'hole',
  'bolt',
  'length',
  'count',
  'angle',
  'force',
] as const;
export type NotationKind = (typeof notationKinds)[number];

/** A refused reading: the text says something else in the other unit, or nothing. */
export const refused = 'refused';

/** One way of writing something, and how it is read in a shop that works in inches and in one that works in mm. */
export interface Notation {
  kind: NotationKind;
  text: string;
  inInches: string;
  inMm: string;
  source: string;
}

const fabricators = 'as fabricators write it';

/** The lines of one kind: a text and its reading where both shops read alike, or a text and a reading for each. */
export function notations(
  kind: NotationKind,
  lines: readonly (readonly [string, string] | readonly [string, string, string])[],
  source: string = fabricators,
): Notation[] {
  return lines.map(([text, inInches, inMm = inInches]) => ({ kind, text, inInches, inMm, source }));
}
