const firstSerial = 10_959;
const lastSerial = 47_482;
const serialOfUnixEpoch = 25_569;
const millisecondsPerDay = 86_400_000;

/**
 * What was probably typed when a fraction became a date: a whole number from 10,959 to 47,482 (the serial
 * numbers of 1930 to 2029) stands where a small dimension in inches should. Returns `3/8` for the 8th of
 * March of any year, undefined for any other number. Applies to inches only, never to lengths.
 */
export function fractionTurnedDate(number: number): string | undefined {
  if (!Number.isInteger(number) || number < firstSerial || number > lastSerial) return undefined;
  const date = new Date((number - serialOfUnixEpoch) * millisecondsPerDay);
  return `${date.getUTCMonth() + 1}/${date.getUTCDate()}`;
}
