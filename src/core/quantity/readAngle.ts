import { refuse } from '../inputError.js';
import { type CellValue, quoted } from './cellValue.js';
import { inchFraction } from './inchFraction.js';
import { readNumber } from './readNumber.js';
import { tradeText } from './tradeText.js';
import { radianPerDegree } from './units.js';

const longestText = 40;
const degreeMark = / ?(?:[°º]|degrees|degree|degs|deg|d)\.?$/;
const mixedDegrees = /^(\d{1,3})[ -]+(\d+\/\d+)$/;
const degreesAndMinutes = /^(\d{1,3}) ?(?:[°º]|deg|d) ?(\d{2}) ?'$/;
/** Rise in a run of 12: `5:12`, `3-7/16 : 12`, `5 in 12`. */
const bevel = /^(\d{1,2})?(?:(?:^|[ -])(\d+\/\d+))?"? ?(?::|on|in) ?12"?$/;
const run = 12;
const minutesOfDegree = 60;
const minutesOfDay = 1440;

/**
 * An angle in rad from a cell in degrees (`45`, `45°`, `22-1/2`, `22°30'`) or as a bevel in 12 (`5:12`), within the
 * limits given in degrees. A bevel that a spreadsheet turned into a time of day is refused. Common practice, no source.
 */
export function readAngle(
  value: CellValue,
  argument: string,
  leastDegree: number,
  greatestDegree: number,
): number {
  const allowed = `Write degrees from ${leastDegree} to ${greatestDegree}.`;
  if (typeof value === 'number') refuseTime(value, argument);
  const degree =
    writtenDegrees(value, argument) ??
    readNumber(withoutMark(value), argument, `${allowed.slice(0, -1)}, or a bevel such as 5:12.`);
  if (degree >= leastDegree && degree <= greatestDegree) return degree * radianPerDegree;
  return refuse(argument, String(value), `${quoted(value)} is out of range.`, allowed);
}

function withoutMark(value: CellValue): CellValue {
  return typeof value === 'string' && value.length <= longestText
    ? tradeText(value).replace(degreeMark, '')
    : value;
}

/** Degrees that are no plain number: with a fraction, with minutes, as a bevel. */
function writtenDegrees(value: CellValue, argument: string): number | undefined {
  if (typeof value !== 'string' || value.length > longestText) return undefined;
  const source = { argument, received: value };
  const text = tradeText(value);
  const minutes = degreesAndMinutes.exec(text);
  if (minutes && Number(minutes[2]) < minutesOfDegree) {
    return Number(minutes[1]) + Number(minutes[2]) / minutesOfDegree;
  }
  const mixed = mixedDegrees.exec(text.replace(degreeMark, ''));
  if (mixed) return Number(mixed[1]) + inchFraction(mixed[2] ?? '', source);
  const [, whole, fraction] = bevel.exec(text) ?? [];
  if (whole === undefined && fraction === undefined) return undefined;
  const rise = Number(whole ?? 0) + (fraction === undefined ? 0 : inchFraction(fraction, source));
  if (rise <= run) return Math.atan(rise / run) / radianPerDegree;
  return refuse(
    argument,
    value,
    `${quoted(value)} rises more than its run of 12.`,
    'Write the angle in degrees.',
  );
}

/** `5:12` typed into a cell that is no text becomes twelve minutes past five, a share of a day. */
function refuseTime(number: number, argument: string): void {
  const minutes = number * minutesOfDay;
  const whole = Math.round(minutes);
  if (number <= 0 || number >= 1 || Math.abs(minutes - whole) > 1e-6 || whole % 60 !== run) return;
  const typed = `${Math.floor(whole / 60)}:12`;
  const problem = `${quoted(number)} looks like the bevel ${typed} that the spreadsheet turned into a time.`;
  refuse(argument, String(number), problem, `Format the cell as text and type ${typed} again.`);
}
