/**
 * Text from a workbook on one line, short enough to show: it may be a megabyte, or hold control characters. What is too
 * long is cut behind its first sentence, or else behind a whole word.
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
  const word = shown.lastIndexOf(' ');
  return `${word > longest / 2 ? shown.slice(0, word) : shown}…`;
}
