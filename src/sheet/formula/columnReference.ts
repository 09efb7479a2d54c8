/** A column as structured references write it: characters with a meaning of their own are escaped. */
export function columnReference(heading: string): string {
  return heading.replaceAll(/['#@[\]]/g, "'$&");
}

/** The columns from one heading to another: `[Mark]:[Press]`. */
export function columnSpan(first: string, last: string): string {
  return `[${columnReference(first)}]:[${columnReference(last)}]`;
}
