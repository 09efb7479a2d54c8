import type { StepLine } from './stepLine.js';

/** The texts of a card below its head. */
export interface CardText {
  said: string[];
  near: string[];
  steps: StepLine[];
  reasons: string[];
  cautions: string[];
}

/** In pixels, with room to spare: a printer's font may be wider than the one this was measured with. */
const halfHeight = 482;
const headHeight = 66;
const footHeight = 50;
const lines = { said: 15, near: 22, step: 17, reason: 20 };
const letters = { said: 118, near: 100, step: 50, reason: 88 };
const gaps = 24;

/** Whether a card with these texts and a drawing of some height fits in half a page. */
export function isHalf({ said, near, steps, reasons }: CardText, drawing: number): boolean {
  const height =
    headHeight +
    drawing +
    heightOf(said, letters.said, lines.said) +
    heightOf(near, letters.near, lines.near) +
    Math.ceil(
      countOf(
        steps.map(({ title, words }) => `${title} ${words}`),
        letters.step,
      ) / 2,
    ) *
      lines.step +
    heightOf(reasons, letters.reason, lines.reason) +
    footHeight +
    gaps;
  return height <= halfHeight;
}

function countOf(texts: readonly string[], perLine: number): number {
  return texts.reduce((sum, text) => sum + Math.max(1, Math.ceil(text.length / perLine)), 0);
}

function heightOf(texts: readonly string[], perLine: number, lineHeight: number): number {
  return countOf(texts, perLine) * lineHeight;
}
