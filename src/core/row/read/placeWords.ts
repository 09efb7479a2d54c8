import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { PartEnd, PartSide } from '../job/rowJob.js';
import { cellWords, type CellWords } from './cellWords.js';
import { wordTable } from '../../quantity/wordTable.js';

export type PlaceNoun = 'corner' | 'end' | 'edge';
type Every = 'all' | 'both' | 'each';

/** One place of a cell as its words say it; the order of the words makes no difference. */
export interface PlaceWords {
  ends: PartEnd[];
  sides: PartSide[];
  nouns: PlaceNoun[];
  /** `left corners`. */
  plural: boolean;
  every?: Every;
  /** The face: `long`, `web`, `bottom flange`, or the size of a leg. */
  leg?: string;
  /** The distance. */
  size?: string;
  /** What the distance is from, as `bottom edge 6 from left end` says behind the place. */
  from?: PlaceReference;
}

/** An end or a long edge that a distance is taken from. */
export type PlaceReference = PartEnd | PartSide;

export const endWords: Record<string, PartEnd> = wordTable({
  left: 'left',
  l: 'left',
  lh: 'left',
  right: 'right',
  r: 'right',
  rh: 'right',
  links: 'left',
  rechts: 'right',
});
export const sideWords: Record<string, PartSide> = wordTable({
  bottom: 'bottom',
  btm: 'bottom',
  bot: 'bottom',
  lower: 'bottom',
  top: 'top',
  upper: 'top',
  heel: 'heel',
  toe: 'toe',
  ...{ unten: 'bottom', onder: 'bottom', oben: 'top', boven: 'top' },
  ...{ ferse: 'heel', hiel: 'heel', teen: 'toe' },
});
const nounWords: Record<string, PlaceNoun> = wordTable({
  corner: 'corner',
  corners: 'corner',
  end: 'end',
  ends: 'end',
  edge: 'edge',
  edges: 'edge',
});
const cornerWords: Record<string, [PartSide, PartEnd]> = wordTable({
  bl: ['bottom', 'left'],
  br: ['bottom', 'right'],
  tl: ['top', 'left'],
  tr: ['top', 'right'],
});
const everyWords: Record<string, Every> = wordTable({
  all: 'all',
  four: 'all',
  both: 'both',
  each: 'each',
  every: 'each',
});
const faceWords = new Set(['leg', 'long', 'short', 'web', 'flange']);
const fillers = new Set(['at', 'the', 'of', 'on', 'from', 'to', 'side', 'sides', 'hand', 'typ']);
const reference = /^(?:the )?([a-z]+)(?: (?:end|edge|side))?$/;

/** Reads the words of one place. Throws `invalid` for a word that is none of a place, quoted, with what is allowed. */
export function placeWords(item: string, argument: string, received: string, allowed: string): PlaceWords {
  const [before, behind, ...others] = tradeText(item).split(' from ');
  const [, word = ''] = reference.exec(behind ?? '') ?? [];
  const from = endWords[word] ?? sideWords[word];
  // `bottom edge 6 from left end` names its place first; `4 from left end` is a place as a whole.
  if (before !== undefined && from !== undefined && others.length === 0 && namesPlace(before)) {
    return { ...placeWords(before, argument, received, allowed), from };
  }
  const read = cellWords(item);
  const place: PlaceWords = { ends: [], sides: [], nouns: [], plural: false };
  for (const word of read.words) {
    if (takeWord(place, word) || faceWords.has(word) || fillers.has(word)) continue;
    refuse(argument, received, `${quoted(word)} in ${quoted(item)} is no word of a place.`, allowed);
  }
  const sizes = takeFace(place, read);
  if (
    sizes === undefined ||
    sizes.length > 1 ||
    (read.words.includes('leg') && /\b[lr]\b/.test(item.toLowerCase()))
  ) {
    return refuse(argument, received, `${quoted(item)} is not a place.`, allowed);
  }
  const [size] = sizes;
  return size === undefined ? place : { ...place, size };
}

function namesPlace(text: string): boolean {
  return cellWords(text).words.some((word) => !fillers.has(word));
}

function takeWord(place: PlaceWords, word: string): boolean {
  const corner = cornerWords[word];
  const end = corner?.[1] ?? endWords[word];
  const side = corner?.[0] ?? sideWords[word];
  const noun = nounWords[word];
  const every = everyWords[word];
  if (end) place.ends.push(end);
  if (side) place.sides.push(side);
  if (noun) {
    place.nouns.push(noun);
    place.plural ||= word.endsWith('s');
  }
  if (every) place.every = every;
  return [end, side, noun, every].some((each) => each !== undefined);
}

/** Takes the face out of the words and sizes; gives the sizes that are left, undefined where the face is unclear. */
function takeFace(place: PlaceWords, { words, order, sizes }: CellWords): string[] | undefined {
  const faces = words.filter((word) => faceWords.has(word) && word !== 'leg');
  const [face, ...others] = faces;
  if (others.length > 0) return undefined;
  if (face === undefined) return words.includes('leg') ? takeLegSize(place, order) : sizes;
  // A flange has a heel and a toe: bottom or top say which flange.
  const which =
    face === 'flange' ? place.sides.find((side) => side === 'bottom' || side === 'top') : undefined;
  place.sides = place.sides.filter((side) => side !== which);
  place.leg = which === undefined ? face : `${which} ${face}`;
  return sizes;
}

/** `leg 3` or `3 in leg`: the size beside the word. */
function takeLegSize(place: PlaceWords, order: CellWords['order']): string[] | undefined {
  const at = order.findIndex(({ word }) => word === 'leg');
  const beside = [order[at - 1], order[at + 1]].filter((each) => each?.size !== undefined);
  const [legSize, ...others] = beside;
  if (legSize?.size === undefined || others.length > 0) return undefined;
  place.leg = legSize.size;
  return order.flatMap((each) => (each.size === undefined || each === legSize ? [] : [each.size]));
}
