import { countWords } from '../quantity/readCount.js';
import type { Hole } from './hole.js';
import { wordTable } from '../quantity/wordTable.js';

/** The words that name the shape of a hole, before or behind its size. */
export const shapeWords: Readonly<Record<string, Hole['shape']>> = wordTable({
  ...words('round', ['ø', 'dia', 'diam', 'diameter', 'round', 'rd', 'd']),
  ...words('square', ['sq', 'square', 'vkt', 'vierkant']),
  ...words('rectangle', ['rect', 'rectangle']),
  ...words('hexagon', ['hex', 'hexagon', 'sechskant']),
  ...words('slot', [
    'slot',
    'slots',
    'slotted',
    'ssl',
    'lsl',
    'short slot',
    'long slot',
    'oblong',
    'obround',
  ]),
  ...words('slot', ['ll', 'langloch', 'langlöcher', 'trou oblong', 'colisos', 'coliso']),
});

/** Words that say nothing of the size: `13/16 TYP`, `Ø22 THRU`, `Bohrung 22`. */
export const fillers = [
  ...['typ', 'typical', 'thru', 'through', 'hole', 'loch', 'bohrung', 'trou', 'agujero', 'durchgehend'],
];
const plurals = ['holes', 'löcher', 'bohrungen', 'trous', 'agujeros'];

function words(shape: Hole['shape'], spellings: readonly string[]): Record<string, Hole['shape']> {
  return Object.fromEntries(spellings.map((spelling) => [spelling, shape]));
}

const longestFirst = (list: readonly string[]) => [...list].sort((a, b) => b.length - a.length).join('|');
const filler = longestFirst([...fillers, ...plurals]);
const letters = 'a-zäöüéè';

const shapeBefore = new RegExp(`^(${longestFirst(Object.keys(shapeWords))})(?![${letters}])\\.? ?(.*)$`);
/** A `d` behind a size says nothing: `22 d` may be unfinished. */
const shapesBehind = longestFirst(Object.keys(shapeWords).filter((word) => word !== 'd'));
const shapeBehind = new RegExp(`^([\\d.,].*?) ?(?<![${letters}])(${shapesBehind})\\.?$`);
const fillerBefore = new RegExp(`^(?:${filler})(?![${letters}])[.:]? ?`);
const fillerBehind = new RegExp(`[ ,]*(?<![${letters}])(?:\\((?:${filler})\\.?\\)|(?:${filler})\\.?)$`);

const countForms: readonly RegExp[] = [
  /^\((?<count>\d{1,3}) ?x?\)(?<rest>.+)$/,
  /^(?<count>\d{1,3}) ?@(?<rest>.+)$/,
  /^(?<count>\d{1,3}) ?[x-]? ?(?<rest>(?:ø|diam?\.?|d) ?[\d.].*)$/,
  /^(?<count>\d{1,3}) ?x ?(?<rest>(?:slot|sq|square|rect|rectangle|hex|hexagon|ll)\.? ?[\d.].*)$/,
  new RegExp(`^(?<count>\\d{1,3}) ?(?<word>[${letters}']+)(?<rest>[^${letters}'].*)$`),
  /^(?<rest>[^()]+)\((?<count>\d{1,3}) ?x?\)$/,
];
/** `13/16 - 4 holes`, `Ø22 4x`: the count with its word is at the end. */
const countAtEnd = new RegExp(`,? (?:[-x] )?(?<count>\\d{1,3}) ?(?<word>[${letters}']+)\\.?$`);
/** What may stand between a count and a size; the point of `.8125` is its own. */
const leadingMarks = /^(?:\.(?!\d))?[ :@-]*/;
/** Between a count and a size, `x` says a slot as well. */
const saysCount = new Set(countWords.filter((word) => word !== 'x'));
const saysCountAtEnd = new Set(countWords);

/** Most texts are sizes without a word. */
const sizesAlone = /^\d[\dx/.," -]*[\d"]$/;

/** A hole text taken apart: how many, and what is left to be read as one hole. */
export interface CountedHole {
  count?: number;
  rest: string;
}

/** Takes the count and the words that say nothing from a hole text in the one spelling of the trade. */
export function countedHole(text: string): CountedHole {
  if (sizesAlone.test(text)) return { rest: text };
  for (const form of countForms) {
    const { count, word, rest = '' } = form.exec(text)?.groups ?? {};
    if (count === undefined || (word !== undefined && !saysCount.has(word))) continue;
    return { count: Number(count), rest: withoutFillers(rest.replace(leadingMarks, '')) };
  }
  const end = countAtEnd.exec(text);
  const { count, word = '' } = end?.groups ?? {};
  if (end && count !== undefined && saysCountAtEnd.has(word))
    return { count: Number(count), rest: withoutFillers(text.slice(0, end.index)) };
  return { rest: withoutFillers(text) };
}

function withoutFillers(text: string): string {
  return text.replace(fillerBehind, '').replace(fillerBehind, '').replace(fillerBefore, '').trim();
}

/** The shape that a word before or behind the size names, and the size. */
export function shapeAndSize(text: string): { shape?: Hole['shape']; size: string } {
  if (sizesAlone.test(text)) return { size: text };
  const before = shapeBefore.exec(text);
  const behind = before ? null : shapeBehind.exec(text);
  const size = (before?.[2] ?? behind?.[1] ?? text).trim();
  const shape = shapeWords[before?.[1] ?? behind?.[2] ?? ''];
  return shape === undefined ? { size } : { shape, size };
}
