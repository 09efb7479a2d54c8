import { formatNumber } from '../../core/quantity/formatLength.js';

const notKnown = 'not known';
const secondsPerMinute = 60;

/** A time in minutes: `12.5`. */
export function minutesText(seconds: number | undefined): string {
  return seconds === undefined ? notKnown : formatNumber(seconds / secondsPerMinute, 1);
}

/** An amount with its two places: `12.50`. */
export function costText(amount: number | undefined): string {
  return amount === undefined ? notKnown : amount.toFixed(2);
}
