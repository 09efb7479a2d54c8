const DAY = 86_400_000;

/** The serial number of a date cell stored as ISO 8601 text, or undefined when it is none. */
export function serialFromIso(text: string, date1904: boolean): number | undefined {
  const timeOnly = /^T?\d{2}:\d{2}/.test(text);
  const stamp = Date.parse(timeOnly ? `1970-01-01T${text.replace(/^T/, '')}Z` : zoned(text));
  if (Number.isNaN(stamp)) return undefined;
  if (timeOnly) return stamp / DAY;
  const days = stamp / DAY - Date.UTC(1899, 11, 30) / DAY;
  if (date1904) return days - 1462;
  // The 1900 system counts a 29 February 1900 that never was.
  return days < 61 ? days - 1 : days;
}

const zoned = (text: string) =>
  /(?:Z|[+-]\d{2}:?\d{2})$/.test(text) || !text.includes('T') ? text : `${text}Z`;
