/** A size that a line would break at its hyphen or its space: `30-1/2"`, `9'-4 1/2"`. */
const size = /(\d+'-\d+ \d+\/\d+"?|\d+-\d+\/\d+"?)/;

/**
 * A text in pieces, so that sizes in it can be kept whole where lines break.
 * @param text words with sizes among them
 * @returns pieces in their order: words at even places, blank where there are none, and sizes at odd ones
 * @example sizePieces('cut at 9\'-4 1/2"') // ['cut at ', '9\'-4 1/2"', '']
 * Source: common practice, no source.
 */
export function sizePieces(text: string): string[] {
  return text.split(size);
}
