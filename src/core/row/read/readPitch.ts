import { InputError, refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { formatLength } from '../../quantity/formatLength.js';
import { lengthExamples } from '../../quantity/lengthText.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { LengthUnit } from '../../quantity/units.js';
import { longestCell } from './cellWords.js';
import { anyLine } from './holeLines.js';
import { listItems, withLastUnit } from './listItems.js';
import { type PitchContext, pitchText, type TypedPitch } from './pitchText.js';

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
const decimal =
  /^(?:(\d{1,3}) ?@ ?)?(?:\d+|\d{1,3}(?:\.\d{3})+),\d+ ?(?:[a-z]+\.?|")?(?: ?= ?\d+ ?(?:[a-z]+\.?|")?)?$/;
/** No code lets holes be nearer than about twice their size, so that nearer steps are no distances from the first hole. */
const leastStepInHoles = 2;
/** Totals on drawings are rounded. */
const totalToleranceMm = 0.5;
const sameMm = 1e-6;
const allowed: Record<LengthUnit, string> = {
  in: 'Write 3, or the spaces one by one: 3, 3-1/2, 3 or 2@3, 3-1/2.',
  mm: 'Write 60, or the spaces one by one: 60; 75; 60 or 2@60; 75.',
};

/**
 * Reads the pitch of a line of holes: one distance, or a chain of spaces (`3, 3-1/2, 3`, `2@3, 3-1/2`, `4x120`, in mm
 * `100-120-150`, `2@3 = 6`, whose total is checked). A chain has one space less than its line has holes. Throws `invalid` for another number of spaces, and
 * for rising numbers that may as well be running dimensions. Source: common practice, no source.
 */
export function readPitch(text: string, given: PitchContext): Pitch {
  if (text.length > longestCell) return { pitchMm: given.length(text) };
  const context = { ...given, typed: text };
  const plain = pitchText(context);
  if (!/[,;=@&+\n]|\band\b/i.test(plain)) return { pitchMm: onePitch(plain, context) };
  const items = spacesOf(plain, context);
  const chain = items.flatMap(({ eachMm, count }) => Array.from({ length: count }, () => eachMm));
  const [first = 0] = chain;
  const [only, ...others] = items;
  if (only && others.length === 0 && !only.counted) return { pitchMm: only.eachMm };
  requireSpaces(chain.length, context);
  refuseRunning(items, context);
  return chain.every((each) => Math.abs(each - first) < sameMm) ? { pitchMm: first } : { pitchesMm: chain };
}

/** One distance; what is none is told with how a pitch is written. */
function onePitch(text: string, { argument, unit, length, typed }: TypedPitch): number {
  try {
    return length(text);
  } catch (error) {
    if (!(error instanceof InputError) || error.failure.allowed !== lengthExamples(unit)) throw error;
    return refuse(argument, typed, `${quoted(typed)} is not a pitch.`, allowed[unit]);
  }
}

function spacesOf(text: string, context: TypedPitch): Spaces[] {
  const { argument, lines, typed } = context;
  const { items, parted } = listItems(tradeText(text.replaceAll('\n', ';')));
  if (items.length > 1 && items[0] === '0') {
    const problem = `${quoted(typed)} starts at 0, as running dimensions do.`;
    refuse(argument, typed, problem, 'Write the spaces between the holes: 2@3, 3-1/2.');
  }
  const [isDecimal, count = ''] = (parted && decimal.exec(items[0] ?? '')) ?? [];
  // Of one number a comma may part two spaces; of several spaces their number tells.
  const partedFits = lines.fits(Number(count === '' ? 1 : count) + 1);
  const decimalFits = count === '' || lines.fits(Number(count));
  if (parted && isDecimal && partedFits && decimalFits && lines !== anyLine) {
    const [one = '', two = ''] = parted;
    const problem = `${quoted(typed)} may be ${one}.${two} or ${count === '' ? 'two spaces' : 'spaces'} of ${one} and ${two}.`;
    refuse(argument, typed, problem, `Write ${one}.${two}, or ${one}; ${two}.`);
  }
  const asDecimal = isDecimal !== undefined && (decimalFits || !partedFits);
  const read = (parted && !asDecimal ? parted : items).map((item) => spacesPattern.exec(item));
  const sizes = withLastUnit(read.map((match) => match?.[2] ?? ''));
  let totalMm = 0;
  return read.map((match, at) => {
    const count = Number(match?.[1] ?? 1);
    if (!match || count < 1)
      return refuse(argument, typed, `${quoted(typed)} is not a pitch.`, allowed[context.unit]);
    const eachMm = context.length(sizes[at] ?? '');
    totalMm += count * eachMm;
    const givenMm = match[3] === undefined ? undefined : context.length(match[3]);
    const totals = at === read.length - 1 ? [count * eachMm, totalMm] : [count * eachMm];
    if (givenMm !== undefined) requireTotal(givenMm, totals, context);
    return { eachMm, count, counted: match[1] !== undefined || givenMm !== undefined };
  });
}

/** A total is of the spaces before it, or, at the end, of the whole chain. */
function requireTotal(
  givenMm: number,
  totalsMm: readonly number[],
  { argument, unit, typed }: TypedPitch,
): void {
  if (totalsMm.some((each) => Math.abs(each - givenMm) <= totalToleranceMm)) return;
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const sum = [...new Set(totalsMm.map(size))].join(' or ');
  refuse(
    argument,
    typed,
    `${quoted(typed)}: the spaces add up to ${sum}, not ${size(givenMm)}.`,
    'Correct one of them.',
  );
}

function requireSpaces(spaces: number, { argument, lines, typed }: TypedPitch): void {
  if (lines.fits(spaces)) return;
  const holes = `${spaces} ${spaces === 1 ? 'space' : 'spaces'}, so ${spaces + 1} holes in a line`;
  refuse(argument, typed, `${quoted(typed)} is ${holes}; ${lines.said}.`, lines.fix);
}

/** `3, 6, 9` may be three spaces, or where holes lie from the first: then they are 3 apart. */
function refuseRunning(items: readonly Spaces[], context: TypedPitch): void {
  if (items.length < 2 || items.some(({ counted }) => counted)) return;
  const spaces = items.map(({ eachMm }) => eachMm);
  const steps = spaces.map((each, at) => each - (spaces[at - 1] ?? 0));
  if (!steps.every((step, at) => at === 0 || step > leastStepInHoles * context.leastApartMm)) return;
  const asSpaces = chainText(spaces, context.unit);
  const asSteps = chainText(steps, context.unit);
  refuse(
    context.argument,
    context.typed,
    `${quoted(context.typed)} may be spaces or distances from the first hole.`,
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
