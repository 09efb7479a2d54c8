/** The day that stands for 1 January 1970 where days count from the end of 1899. */
const serialOfUnixEpoch = 25_569;
const millisecondsPerDay = 86_400_000;
const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June'],
  ...['July', 'August', 'September', 'October', 'November', 'December'],
] as const;

/** A day by its parts, months from 1, and as text: `16 September 2026`. */
export interface SerialDate {
  day: number;
  month: number;
  year: number;
  text: string;
}

/** The date that a spreadsheet keeps as a number of days, from 1 March 1900 on. A part of a day is left out. */
export function serialDate(serial: number): SerialDate {
  const date = new Date((Math.floor(serial) - serialOfUnixEpoch) * millisecondsPerDay);
  const [day, month, year] = [date.getUTCDate(), date.getUTCMonth() + 1, date.getUTCFullYear()];
  return { day, month, year, text: `${day} ${months[month - 1]} ${year}` };
}
