import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import type { HoleGroup, PartSide } from '../job/rowJob.js';
import { cellWords, longestCell } from './cellWords.js';
import { endWords, type PlaceReference, sideWords } from './placeWords.js';
import { wordTable } from '../../quantity/wordTable.js';

const knownWords: Record<string, PlaceReference> = wordTable({ ...endWords, ...sideWords });
const fillers = new Set(['from', 'the', 'at', 'of', 'end', 'edge', 'side', 'hand', 'typ', 'typical']);
const fromEnd = /\bend\b/i;
const bothEnds = /\b(?:each|every|both|per|ea)\b/i;

/** Reads the distance from an end, with the end it is from: `1-1/2 right`. Without one it is from the left end. */
export function readEnd(
  text: string,
  argument: string,
  length: (text: string) => number,
): Pick<HoleGroup, 'endMm' | 'endFrom'> {
  if (bothEnds.test(text)) {
    const fix = 'Write the distance alone here, and the holes as 2 each end under Holes.';
    refuse(argument, text, `${quoted(text)} is at both ends.`, fix);
  }
  const { size, side } = sidedSize(text, argument, 'Write 1-1/2, or right 1-1/2.');
  if (side === undefined) return { endMm: length(size) };
  if (side === 'left' || side === 'right') return { endMm: length(size), endFrom: side };
  return refuse(
    argument,
    text,
    `${side} is no end.`,
    'Write left or right, or give the distance under Edge.',
  );
}

/**
 * Reads the distance from a long edge, with the edge it is from: `top 2` on a plate or web. On a leg or flange it is from
 * the toe, so that `toe` may stand there and nothing else.
 */
export function readEdge(
  text: string,
  argument: string,
  length: (text: string) => number,
  sides: readonly PartSide[] | undefined,
): Pick<HoleGroup, 'edgeMm' | 'edgeFrom'> {
  const { size, side } = sidedSize(text, argument, 'Write 1-1/2, or top 1-1/2 on a plate or web.');
  if (side === undefined && fromEnd.test(text)) {
    refuse(argument, text, `${quoted(text)} is from an end.`, 'Give the distance under End.');
  }
  if (side === undefined) return { edgeMm: length(size) };
  if (side === 'left' || side === 'right') {
    return refuse(argument, text, `${side} is an end.`, 'Give the distance under End.');
  }
  if (side === 'heel') {
    return refuse(
      argument,
      text,
      'Edge is from the toe of a leg.',
      'Give the distance from the heel under Gage.',
    );
  }
  const known = sides === undefined || sides.some((each) => each === side);
  if (side === 'toe' && known) return { edgeMm: length(size) };
  if ((side === 'bottom' || side === 'top') && known) return { edgeMm: length(size), edgeFrom: side };
  return refuse(
    argument,
    text,
    side === 'toe' ? 'a plate or web has no toe.' : `a leg or flange has no ${side}; Edge is from its toe.`,
    side === 'toe'
      ? `Write bottom ${size} or top ${size}.`
      : `Write ${size}, or a distance from the heel under Gage.`,
  );
}

/** The size of a text and the one side it names; a text that names none is all size. */
function sidedSize(text: string, argument: string, allowed: string): { size: string; side?: PlaceReference } {
  if (text.length > longestCell || !/[a-z]/i.test(text)) return { size: text };
  const { words, sizes } = cellWords(text.replace(/(?<![a-z])typ\./gi, 'typ'));
  if (words.length === 0) return { size: text };
  const [side, ...others] = words.flatMap((word) => knownWords[word] ?? []);
  const [size] = sizes;
  const clear = words.every((word) => word in knownWords || fillers.has(word));
  if (size !== undefined && sizes.length === 1 && clear && others.length === 0) {
    return side === undefined ? { size } : { size, side };
  }
  if (side === undefined) return { size: text };
  return refuse(argument, text, `${quoted(text)} is not one distance.`, allowed);
}
