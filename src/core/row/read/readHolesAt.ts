import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { HoleGroup } from '../job/rowJob.js';
import { withLastUnit } from './listItems.js';

type Points = NonNullable<HoleGroup['holesAt']>;
type Pair = { x: string; y: string };

const allowed = 'Write x2 y2; x8 y2: from the left end, and from the bottom edge or heel.';

/**
 * Reads the centers of holes one by one: `x2 y2; x8 y2`, x from the left end and y from the bottom edge or heel, in either
 * order; `2, 2; 8, 2` and `(2, 2), (8, 2)` with x first. Throws `invalid` for what is no list of points and for a point
 * that stands twice. Source: common practice, no source.
 */
export function readHolesAt(
  text: string,
  argument: string,
  length: (text: string, kind: 'length' | 'distance') => number,
): Points {
  const typed = tradeText(text.replaceAll('\n', ';'));
  // Where one point stands in brackets all of them do, and nothing stands between.
  if (/[()]/.test(typed) && !/^[\s,;]*$/.test(typed.replace(/\([^()]*\)/g, ' '))) {
    return refuse(argument, text, `${quoted(text)} is not a list of holes.`, allowed);
  }
  const plain = typed.replaceAll('(', ' ').replaceAll(')', ';');
  const pairs = /[xy]/.test(plain) ? lettered(plain) : bare(plain);
  if (!pairs || pairs.length === 0) {
    return refuse(argument, text, `${quoted(text)} is not a list of holes.`, allowed);
  }
  const sizes = withLastUnit(pairs.flatMap(({ x, y }) => [x, y]));
  const points = pairs.map((_, at) => ({
    xMm: length(sizes[2 * at] ?? '', 'length'),
    yMm: length(sizes[2 * at + 1] ?? '', 'distance'),
  }));
  const keys = points.map(({ xMm, yMm }) => `${xMm} ${yMm}`);
  if (new Set(keys).size === keys.length) return points;
  return refuse(argument, text, `${quoted(text)} names a hole twice.`, 'Name each hole once.');
}

/** `x2 y2; x8 y2`: each letter stands before its size, and each point has one of both. */
function lettered(text: string): Pair[] | undefined {
  const pairs: Pair[] = [];
  let point: Partial<Pair> = {};
  const first = text.search(/[xy]/);
  if (/[^\s,;]/.test(text.slice(0, first))) return undefined;
  for (const [, letter, size = ''] of text.matchAll(/([xy])([^xy]*)/g)) {
    const key = letter === 'x' ? 'x' : 'y';
    if (point[key] !== undefined) return undefined;
    point = { ...point, [key]: size.replace(/^[\s=:@]+|[\s,;]+$/g, '') };
    if (point.x === undefined || point.y === undefined) continue;
    pairs.push({ x: point.x, y: point.y });
    point = {};
  }
  return Object.keys(point).length === 0 ? pairs : undefined;
}

/** `2, 2; 8, 2`: a point needs two sizes, so that a comma between two digits parts them where no other does. */
function bare(text: string): Pair[] | undefined {
  const pairs: Pair[] = [];
  const points = text.split(';').map((each) => each.replace(/^[\s,]+|[\s,]+$/g, ''));
  for (const point of points.filter((each) => each !== '')) {
    const spaced = point.split(/,(?!\d)|(?<!\d),/);
    const [x, y, ...others] = (spaced.length > 1 ? spaced : point.split(',')).map((size) => size.trim());
    if (x === undefined || y === undefined || others.length > 0) return undefined;
    pairs.push({ x, y });
  }
  return pairs;
}
