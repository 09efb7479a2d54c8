import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { formatLength } from '../../quantity/formatLength.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { LengthUnit } from '../../quantity/units.js';
import { longestCell } from './cellWords.js';
import { listItems, withLastUnit } from './listItems.js';
import type { HoleLines } from './holeLines.js';

export interface PitchContext {
  argument: string;
  unit: LengthUnit;
  length: (text: string) => number;
  lines: HoleLines;
  /** The least that two holes must be apart not to lie in each other. */
  leastApartMm: number;
}

/** The distance of holes in a line: one for all spaces, or one for each. */
export type Pitch = { pitchMm: number } | { pitchesMm: readonly number[] };

interface Spaces {
  eachMm: number;
  count: number;
  /** `2@3` says that it is spaces. */
  counted: boolean;
}

const spacesPattern =
  /^(?:(\d{1,3}) ?(?:equal |eq\.? ?)?(?:spaces |sp\.? ?|spa\.? ?)?@ ?)?([^=@]+?)(?: ?= ?([^=@]+))?$/;
const isDecimal = /^\d+,\d+ ?(?:[a-z]+\.?|")?$/;
/** Totals on drawings are rounded. */
const totalToleranceMm = 0.5;
const sameMm = 1e-6;
const allowed = 'Write 3, or the spaces one by one: 3, 3-1/2, 3 or 2@3, 3-1/2.';

/**
 * Reads the pitch of a line of holes: one distance, or a chain of spaces (`3, 3-1/2, 3`, `2@3, 3-1/2`, `2@3 = 6`, whose
 * total is checked). A chain has one space less than its line has holes. Throws `invalid` for another number of spaces, and
 * for rising numbers that may as well be running dimensions. Source: common practice, no source.
 */
export function readPitch(text: string, context: PitchContext): Pitch {
  if (text.length > longestCell) return { pitchMm: context.length(text) };
  const plain = /[a-z]/i.test(text) ? withoutMarks(text) : text;
  if (!/[,;=@&+\n]|\band\b/i.test(plain)) return { pitchMm: context.length(plain) };
  const items = spacesOf(plain, context);
  const chain = items.flatMap(({ eachMm, count }) => Array.from({ length: count }, () => eachMm));
  const [first = 0] = chain;
  const [only, ...others] = items;
  if (only && others.length === 0 && !only.counted) return { pitchMm: only.eachMm };
  requireSpaces(chain.length, plain, context);
  refuseRunning(items, plain, context);
  return chain.every((each) => Math.abs(each - first) < sameMm) ? { pitchMm: first } : { pitchesMm: chain };
}

/** Without the marks that say no more than that it is a distance of centers: `3 TYP`, `3 o.c.`, `3" C/C`. */
function withoutMarks(text: string): string {
  return text
    .replace(/(?<![a-z])(?:typ(?:ical|\.)?|o\.c\.|o\/?c|c\/c|c-c|ctrs?\.?|centers|centres)(?![a-z])/gi, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();
}

function spacesOf(text: string, context: PitchContext): Spaces[] {
  const { argument, lines } = context;
  const { items, parted } = listItems(tradeText(text.replaceAll('\n', ';')));
  if (items.length > 1 && items[0] === '0') {
    const problem = `${quoted(text)} starts at 0, as running dimensions do.`;
    refuse(argument, text, problem, 'Write the spaces between the holes: 2@3, 3-1/2.');
  }
  const decimal = parted && isDecimal.test(items[0] ?? '');
  if (decimal && lines.fits(parted.length)) {
    const [one = '', two = ''] = parted;
    const problem = `${quoted(text)} may be ${one}.${two} or two spaces of ${one} and ${two}.`;
    refuse(argument, text, problem, `Write ${one}.${two}, or ${one}; ${two}.`);
  }
  const read = (parted && !decimal ? parted : items).map((item) => spacesPattern.exec(item));
  const sizes = withLastUnit(read.map((match) => match?.[2] ?? ''));
  let totalMm = 0;
  return read.map((match, at) => {
    const count = Number(match?.[1] ?? 1);
    if (!match || count < 1) return refuse(argument, text, `${quoted(text)} is not a pitch.`, allowed);
    const eachMm = context.length(sizes[at] ?? '');
    totalMm += count * eachMm;
    const givenMm = match[3] === undefined ? undefined : context.length(match[3]);
    const totals = at === read.length - 1 ? [count * eachMm, totalMm] : [count * eachMm];
    if (givenMm !== undefined) requireTotal(givenMm, totals, text, context);
    return { eachMm, count, counted: match[1] !== undefined || givenMm !== undefined };
  });
}

/** A total is of the spaces before it, or, at the end, of the whole chain. */
function requireTotal(
  givenMm: number,
  totalsMm: readonly number[],
  text: string,
  context: PitchContext,
): void {
  if (totalsMm.some((each) => Math.abs(each - givenMm) <= totalToleranceMm)) return;
  const { argument, unit } = context;
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const sum = [...new Set(totalsMm.map(size))].join(' or ');
  refuse(
    argument,
    text,
    `${quoted(text)}: the spaces add up to ${sum}, not ${size(givenMm)}.`,
    'Correct one of them.',
  );
}

function requireSpaces(spaces: number, text: string, { argument, lines }: PitchContext): void {
  if (lines.fits(spaces)) return;
  const holes = `${spaces} ${spaces === 1 ? 'space' : 'spaces'}, so ${spaces + 1} holes in a line`;
  refuse(argument, text, `${quoted(text)} is ${holes}; ${lines.said}.`, lines.fix);
}

/** `3, 6, 9` may be three spaces, or where holes lie from the first: then they are 3 apart. */
function refuseRunning(items: readonly Spaces[], text: string, context: PitchContext): void {
  if (items.length < 2 || items.some(({ counted }) => counted)) return;
  const spaces = items.map(({ eachMm }) => eachMm);
  const steps = spaces.map((each, at) => each - (spaces[at - 1] ?? 0));
  if (!steps.every((step, at) => at === 0 || step > context.leastApartMm)) return;
  const asSpaces = chainText(spaces, context.unit);
  const asSteps = chainText(steps, context.unit);
  refuse(
    context.argument,
    text,
    `${quoted(text)} may be spaces or distances from the first hole.`,
    `Write ${asSpaces} for spaces, or ${asSteps} for holes at those distances.`,
  );
}

/** Spaces as they can only be read as spaces: `2@3, 1@3-1/2`. */
function chainText(spacesMm: readonly number[], unit: LengthUnit): string {
  const runs: { text: string; count: number }[] = [];
  for (const text of spacesMm.map((mm) => formatLength(mm, unit))) {
    const last = runs.at(-1);
    if (last?.text === text) last.count += 1;
    else runs.push({ text, count: 1 });
  }
  return runs.map(({ text, count }) => `${count}@${text}`).join(', ');
}
