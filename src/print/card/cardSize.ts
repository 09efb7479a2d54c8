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
const footHeight = 45;
const lines = { said: 16, near: 20, step: 15, reason: 20 };
const letters = { said: 110, near: 95, step: 54, reason: 80 };
const gaps = 24;
/** A step is not parted between the columns: some of it is lost. */
const unparted = 10;

/** Whether a card with these texts and drawings fits in half a page. */
export function isHalf(
  { said, near, steps, reasons }: CardText,
  drawings: { narrow: number; wide: number },
): boolean {
  const stepHeight = heightOf(
    steps.map(({ title, words }) => `${title} ${words}`),
    letters.step,
    lines.step,
  );
  const flow = Math.max(drawings.narrow, (drawings.narrow + stepHeight) / 2 + unparted);
  const height =
    headHeight +
    drawings.wide +
    flow +
    heightOf(said, letters.said, lines.said) +
    heightOf(near, letters.near, lines.near) +
    heightOf(reasons, letters.reason, lines.reason) +
    footHeight +
    gaps;
  return height <= halfHeight;
}

function heightOf(texts: readonly string[], perLine: number, lineHeight: number): number {
  return texts.reduce((sum, text) => sum + Math.max(1, Math.ceil(text.length / perLine)), 0) * lineHeight;
}
