const notKnown = 'not known';
const secondsPerMinute = 60;

/** A time in minutes: `1,395.5`. */
export function minutesText(seconds: number | undefined): string {
  return seconds === undefined ? notKnown : numberText(seconds / secondsPerMinute, 0, 1);
}

/** An amount with its two places: `1,112.50`. */
export function costText(amount: number | undefined): string {
  return amount === undefined ? notKnown : numberText(amount, 2, 2);
}

function numberText(value: number, least: number, most: number): string {
  return value.toLocaleString('en', { minimumFractionDigits: least, maximumFractionDigits: most });
}
