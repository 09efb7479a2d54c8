/** Text from a workbook on one line, short enough to show: it may be a megabyte, or hold control characters. */
export function shortText(text: string, longest = 60): string {
  const line = text
    .slice(0, longest * 4)
    .replaceAll(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]+/gu, ' ')
    .trim();
  return line.length > longest || text.length > longest * 4 ? `${line.slice(0, longest - 1)}…` : line;
}
