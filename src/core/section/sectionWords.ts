/** The families of sections a word can stand for; `other` are sections that are known and not read. */
export type Family = 'plate' | 'bar' | 'angle' | 'round' | 'square' | 'channel' | 'tube' | 'tee' | 'other';

/** A section text taken apart: the word of its family, and what stands between the `x`. */
export interface SectionWords {
  family: Family | undefined;
  word: string;
  parts: string[];
  /** Marks that say nothing of the section itself: `HR`, `LLV`. */
  ignored: string[];
}

const words: Record<string, Family> = {
  ...family('plate', ['pl', 'plt', 'plate']),
  ...family('bar', ['fb', 'fl', 'flat', 'bar', 'flatbar', 'flat bar', 'bar flat']),
  ...family('angle', ['l', 'angle']),
  ...family('round', ['rb', 'rd', 'round', 'rod', 'ø', 'dia', 'round bar', 'rd bar', 'bar round', 'bar rd']),
  ...family('square', ['sq', 'square', 'square bar', 'sq bar', 'bar square', 'bar sq']),
  ...family('channel', ['c', 'mc', 'upn', 'unp', 'upe', 'pfc', 'channel']),
  ...family('tube', ['hss', 'tube', 'shs', 'rhs', 'chs', 'pipe']),
  ...family('tee', ['t', 'tee']),
  ...family('other', [
    'wt',
    'st',
    'mt',
    'w',
    'wf',
    's',
    'm',
    'hp',
    'ipe',
    'hea',
    'heb',
    'hem',
    'ub',
    'uc',
    'ubp',
  ]),
};

/** The families whose word may also stand behind a size: `3/4 RD`, `3/8 PL X 6`. */
const behindSize = new Set<Family>(['plate', 'bar', 'angle', 'round', 'square']);
const leading = /^(?:(?:flat|round|rd|square|sq) bar\b|bar (?:flat|round|rd|square|sq)\b|ø|[a-wyz]+)/;
const trailing = /(?:\b(?:flat|round|rd|square|sq) bar|[a-wyz]+|ø)$/;
/** How the bar was rolled or finished. */
const finish = /^(hr|cr|cf) /;
/** Which leg of an angle is vertical, or how two stand back to back. */
const legMark = / ?(llv|llh|llbb|slbb)$/;

function family(name: Family, spellings: readonly string[]): Record<string, Family> {
  return Object.fromEntries(spellings.map((spelling) => [spelling, name]));
}

/**
 * Takes a section text apart, already in the one spelling of the trade: the word before the sizes (`pl 3/8x6`) or
 * behind one of them (`3/8 pl x 6`, `1 sq bar`), marks that change nothing aside.
 */
export function sectionWords(text: string): SectionWords {
  const rolled = finish.exec(text)?.[1];
  const rest = rolled === undefined ? text : text.slice(rolled.length + 1);
  const word = leading.exec(rest)?.[0] ?? '';
  const behindWord = rest.slice(word.length).replace(/^\. /, '');
  const parts = behindWord.split('x').map((part) => part.trim());
  const read = word === '' ? wordBehindSize(parts) : { family: words[word], word, parts, ignored: [] };
  const marked = read.family === 'angle' ? withoutLegMark(read) : read;
  return { ...marked, ignored: [...(rolled === undefined ? [] : [rolled]), ...marked.ignored].map(upper) };
}

const upper = (mark: string) => mark.toUpperCase();

/** `1/2x4` without a word is a flat bar; anything longer may be several things. */
function wordBehindSize(parts: string[]): SectionWords {
  const found = parts.map((part) => sizeAndWord(part));
  const [named, ...others] = found.flatMap((each) => each ?? []);
  if (!named || others.length > 0) {
    return { family: parts.length === 2 ? 'bar' : undefined, word: '', parts, ignored: [] };
  }
  const sizes = parts.map((part, index) => found[index]?.size ?? part);
  return { family: words[named.word], word: named.word, parts: sizes, ignored: [] };
}

function sizeAndWord(part: string): { size: string; word: string } | undefined {
  const behind = part.replace(/\.$/, '');
  const word = trailing.exec(behind)?.[0] ?? '';
  const named = words[word];
  if (named === undefined || !behindSize.has(named) || !/^[\d.,]/.test(part)) return undefined;
  return { size: behind.slice(0, -word.length).trim(), word };
}

function withoutLegMark(read: SectionWords): SectionWords {
  const marks = read.parts.flatMap((part) => legMark.exec(part)?.[1] ?? []);
  return { ...read, parts: read.parts.map((part) => part.replace(legMark, '')), ignored: marks };
}
