import { looksLikeSize } from '../../notation/looksLikeSize.js';
import { type CellValue, isBlank } from '../../quantity/cellValue.js';
import type { LengthUnit } from '../../quantity/units.js';
import { nameKey } from '../../shop/table.js';
import { isOwnHeading } from '../rowItem.js';
import { groupFields, rowFields } from './heading.js';
import { foreignHeadings } from './headingWords.js';
import { saysYes } from '../read/readFinish.js';
import { finishingWords, isWorkHeading, shapeWords } from './workWords.js';

/**
 * Work; a shape that a number below it gives; a size or a count that may be another than the part's; a
 * number, which is a count where the list has no quantity; texts of any kind.
 */
export type NamedBy = 'work' | 'shape' | 'size' | 'count' | 'number' | 'text';

/** A column that none of the inputs has. */
export interface UnreadColumn {
  at: number;
  /** Empty where nothing stands above its cells. */
  heading: string;
  /** What the heading says that it holds. */
  names?: NamedBy | undefined;
  /** The unit of its bare numbers, where it is known. */
  unit?: string;
  /** The column that is read in its place, where two mean the same. */
  beside?: number;
}

/** Words that name a cut, a hole or a bend where a number stands below them: `Left angle`, `Ø`, `Schnittwinkel`. */
const namesShape = new RegExp(
  [
    '[ø⌀°]',
    '(?<!\\p{L})(?:circles?|angles?|cuts?|left|right|skew|slope|dia|diam|diameter|bore|corners?|folds?|snip|opening|mtr|sweep|curve|arc|offset|flange|web',
    finishingWords,
    shapeWords,
    'bev|ang|prep|hems?|form(?:ed)?|brake|machin\\p{L}*|(?:[lr]|left|right) ?ends?|ends? ?[ablr12]',
    'lh|rh|deg(?:rees?)?|cent(?:er|re)s?|ctrs?|o\\.?c|c/c|[xy] ?[1-9]?',
    'links|rechts|winkel|gehr|kerbe|hoek|schuin|afschuining|uitsparing|gauche|droite|chanfrein|grugeage|pliage|cintrage|coupe',
    'ángulo|angulo|corte|izquierda|derecha)(?!\\p{L})',
    '(?:durchmesser|schnitt(?:winkel)?|sägewinkel|schlitz|stanzung|öffnung|aussparung)(?!\\p{L})',
  ].join('|'),
  'iu',
);
/** `Length c-c`, `Overall width`: a size that is the part's own where its cells give the same. */
const namesSize = new RegExp(
  [
    // A letter of a drawing: `A`, `H1`.
    '^[a-z] ?[1-9]?$',
    '(?<!\\p{L})(?:lengths?|lg|lgth|long|width|wide|depth|deep|height|feet|ft|thk|thick(?:ness)?|wall|o\\.?d|sq|ga|gages?|gauges?',
    'dims?|dimensions?|dist|distances?|set-? ?back|return|rise|edges?|pitch|spacing|spa|c-?c|ctc|o-?o|pins?|tabs?|[eg] ?[1-9]',
    'länge|breite|höhe|dicke|maß|abstand|lengte|breedte|hoogte|dikte|maat|afstand)(?!\\p{L})',
  ].join('|'),
  'iu',
);
/** `Multiplier`, `No. of assemblies`, `Total qty`: how often a part is made besides its own count. */
const namesCount =
  /(?<!\p{L})(?:multipl\p{L}*|sets|times|spares?|extras?|rows|lines|cols|columns|assys|assemblies|flights|(?:qty|quantity|pcs) per|(?:ext(?:ended)?|total) (?:qty|quantity|pcs|pieces)|(?:qty|quantity|pcs|pieces),? total|(?:no|nr|num|number|qty|quantity|#)\.? ?(?:of )?(?:assembl\p{L}*|assys?|frames|units)|(?:assembly|assy|frame|unit) (?:qty|quantity|count))(?!\p{L})|^(?:qty|quantity|pcs) ?\//iu;
const isCount = /^(?:(?:no|qty)\.? ?(?:of )?)?(?:pcs?|pieces|req'?d|required|ea|each|quant?)\.?$/iu;
/** `NO.`, `#`: the number of the item beside a quantity, and the quantity itself without one. */
const isNumber = /^(?:no|number|count|#)\.?$/i;
const namesText =
  /(?<!\p{L})(?:remarks?|rmks?|notes?|comments?|desc\p{L}*|instructions?|alloy|temper|operations?|ops|special|extra work|bemerkung\p{L}*|hinweise?|anmerkung\p{L}*|beschreibung|bezeichnung|opmerking\p{L}*|omschrijving|remarques?|observ\p{L}*|notas?|designation)(?!\p{L})/iu;
/** What a cut costs, takes or is listed under is no work of its own. */
const aboutWork =
  /(?<!\p{L})(?:no|nr|num|number|lists?|date|datum|sheet|ticket|status|hours?|hrs?|min|minutes|time|zeit|cost|kosten|price|preis|rate|weight|wt|mass|gewicht|total|by|von|weld|stock|bar|paint|lbs?|kg|sq\.? ?(?:ft|in|m)|lin(?:eal|ear)?|area)(?!\p{L})/iu;

/** Shorter names are slips where the first letter stands; one of three letters where none is left out. */
const leastSlip = 5;
const leastShort = 3;
const leastSwap = 6;
const noSlips = new Set(['usd', 'gate', 'gold']);
const noWork = new Set(['mark', 'drawing', 'revision']);
const knownNames = [...rowFields, ...groupFields]
  .filter(({ key }) => !noWork.has(key))
  .flatMap(({ key, name, synonyms }) => [nameKey(name), ...synonyms, ...(foreignHeadings[key] ?? [])])
  .filter((name) => name.length >= leastShort);

/** Whether a heading is a slip of one that is read: `Mitr left`, `Notch widht`. */
export function isSlip(heading: string): boolean {
  const key = nameKey(heading)
    .replace(/ ?[([,].*$/, '')
    .replace(/ [1-9]$/, '');
  return !noSlips.has(key) && knownNames.some((name) => mayBeSlip(key, name) && isOneSlipApart(key, name));
}

const mayBeSlip = (typed: string, { length, 0: first }: string): boolean =>
  length >= leastSlip || (typed.startsWith(first ?? '') && (length > leastShort || typed.length >= length));

/** One letter left out, typed twice or added, two swapped, or in a longer word one typed for another. */
function isOneSlipApart(typed: string, name: string): boolean {
  if (typed === name || Math.abs(typed.length - name.length) > 1) return false;
  let at = 0;
  while (at < typed.length && typed[at] === name[at]) at += 1;
  if (typed.length < name.length) return typed.slice(at) === name.slice(at + 1);
  if (typed.length > name.length) return typed.slice(at + 1) === name.slice(at);
  const isSwapped = typed[at] === name[at + 1] && typed[at + 1] === name[at];
  if (isSwapped && typed.slice(at + 2) === name.slice(at + 2)) return true;
  return name.length >= leastSwap && typed.slice(at + 1) === name.slice(at + 1);
}

/** What a heading that is not read says of its column; undefined where it says nothing of a part. */
export function namedByUnread(heading: string): NamedBy | undefined {
  if (isOwnHeading(heading)) return undefined;
  if (isWorkHeading(heading) || isSlip(heading)) return 'work';
  if (namesCount.test(heading) || isCount.test(heading)) return 'count';
  if (isNumber.test(heading)) return 'number';
  if (namesText.test(heading)) return 'text';
  if (aboutWork.test(heading)) return undefined;
  if (namesShape.test(heading)) return 'shape';
  return namesSize.test(heading) ? 'size' : undefined;
}

/**
 * Whether a row has something in a column that is not read which must not be dropped: a size; anything below a heading that
 * names work or is a slip of one that is read; a number or a yes below one that names a shape, a number below none; and what differs from
 * the column that is read in its place. What a column of texts or sizes says is compared with the row by itself.
 */
export function holdsUnread(column: UnreadColumn, cells: readonly CellValue[], unit: LengthUnit): boolean {
  const { at, heading, names, beside } = column;
  const cell = cells[at] ?? null;
  if (isBlank(cell) || cell === 0 || isOwnHeading(heading)) return false;
  if (beside !== undefined) return hasDigit(cell) && nameKey(cell) !== nameKey(cells[beside] ?? null);
  if (names === 'text' || names === 'size') return false;
  if (names === 'work' || looksLikeSize(cell, unit)) return true;
  return heading === '' ? typeof cell === 'number' : names === 'shape' && (hasDigit(cell) || saysYes(cell));
}

const hasDigit = (cell: CellValue) => /\d/.test(String(cell));
