import type { StepLine } from './stepLine.js';

/** The texts of a card below its head. */
export interface CardText {
  said: string[];
  near: string[];
  steps: StepLine[];
  reasons: string[];
  cautions: string[];
}

/** In pixels and in letters, with room to spare: a printer's font may be wider than the one this was measured with. */
const halfHeight = 484;
const headHeight = 57;
const footHeight = 53;
const lines = { said: 16, near: 20, step: 15, reason: 20 };
const letters = { said: 110, near: 95, step: 54, reason: 80 };
const gaps = 28;

/** Whether a card with these texts and drawings fits in half a page. */
export function isHalf(
  { said, near, steps, reasons }: CardText,
  drawings: { narrow: readonly number[]; wide: readonly number[] },
): boolean {
  const of = (texts: readonly string[], kind: keyof typeof lines) =>
    texts.map((text) => lineCount(text, letters[kind]) * lines[kind]);
  const inColumns = [
    ...drawings.narrow,
    ...of(
      steps.map(({ title, words }) => `${title} ${words}`),
      'step',
    ),
  ];
  const stacked = [...drawings.wide, ...of(said, 'said'), ...of(near, 'near'), ...of(reasons, 'reason')];
  return headHeight + sum(stacked) + columnHeight(inColumns) + footHeight + gaps <= halfHeight;
}

/** How high two columns are that share blocks in their order as evenly as they can. */
function columnHeight(blocks: readonly number[]): number {
  const whole = sum(blocks);
  let first = 0;
  let least = whole;
  for (const block of blocks) {
    first += block;
    least = Math.min(least, Math.max(first, whole - first));
  }
  return least;
}

/** How many lines a text fills, broken between its words. */
function lineCount(text: string, perLine: number): number {
  let [count, used] = [1, 0];
  for (const word of text.split(' ')) {
    if (used > 0 && used + 1 + word.length > perLine) [count, used] = [count + 1, 0];
    used += (used > 0 ? 1 : 0) + word.length;
    count += Math.floor(used / (perLine + 1));
  }
  return count;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
