const mostNamed = 40;

/** Marks of rows, each once; of very many the first are named and the others counted. */
export function namedMarks(marks: readonly string[], most = mostNamed): string {
  const all = [...new Set(marks.map((mark) => (mark === '' ? 'no mark' : mark)))];
  const more = all.length > most ? ` and ${(all.length - most).toLocaleString('en')} more` : '';
  return `${all.slice(0, most).join(', ')}${more}`;
}
