/** What a size may be, both ends included. Of a size that is known both are the same. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** A size that is known. */
export function exactly(value: number): Range {
  return { least: value, most: value };
}
