/**
 * Text from a workbook on one line, short enough to show: it may be a megabyte, or hold control characters. What is too
 * long is cut behind its first sentence, or else behind a whole word, never inside a letter.
 */
export function shortText(text: string, longest = 60): string {
  const line = text
    .slice(0, longest * 4)
    .replaceAll(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]+/gu, ' ')
    .trim();
  if (line.length <= longest && text.length <= longest * 4) return line;
  const shown = line.slice(0, longest - 1);
  const sentence = shown.lastIndexOf('. ') + 1;
  if (sentence > 0) return shown.slice(0, sentence);
  const word = lastBreak(shown);
  return `${word > longest / 2 ? shown.slice(0, word).trimEnd() : wholeLetters(line, longest - 1)}…`;
}

/** Where a word may end: at a space, or behind what parts long ones without spaces. */
function lastBreak(text: string): number {
  const parted = /^.*[-_/,;:|&.)\]](?=.)/u.exec(text)?.[0].length ?? -1;
  return Math.max(text.lastIndexOf(' '), parted);
}

/** As many whole letters as fit: a letter may be several characters, an accent or a sign behind one. */
function wholeLetters(text: string, longest: number): string {
  const near = new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text.slice(0, 2 * longest));
  const end = Math.max(...[...near].map(({ index }) => index).filter((index) => index <= longest));
  return text.slice(0, end > 0 ? end : longest);
}
