/** The families of sections a word can stand for; `other` are sections that are known and not read. */
export type Family =
  | 'plate'
  | 'bar'
  | 'angle'
  | 'round'
  | 'square'
  | 'channel'
  | 'tube'
  | 'tee'
  | 'beam'
  | 'other';

/** A section text taken apart: the word of its family, and what stands between the `x`. */
export interface SectionWords {
  family: Family | undefined;
  word: string;
  parts: string[];
  /** Marks that say nothing of the section itself: `HR`, `LLV`. */
  ignored: string[];
}

/** The words of sections: American, English, German, Dutch, French, Spanish and Italian, as fabricators write them. */
export const sectionSpellings: readonly { family: Family; word: string; spellings: readonly string[] }[] = [
  {
    family: 'plate',
    word: 'pl',
    spellings: [
      'pl',
      'plt',
      'plate',
      'bl',
      'blech',
      'tôle',
      'tole',
      'chapa',
      'bent pl',
      'plaat',
      'grobblech',
      'feinblech',
    ],
  },
  {
    family: 'plate',
    word: 'chk',
    spellings: [
      'chk pl',
      'chkd pl',
      'ckd pl',
      'chkr pl',
      'checkered pl',
      'checkered plate',
      'chequer plate',
      'riffelblech',
      'tränenblech',
      'tranenplaat',
    ],
  },
  {
    family: 'bar',
    word: 'fb',
    spellings: ['fb', 'fl', 'flat', 'bar', 'flatbar', 'flat bar', 'bar flat', 'flt'],
  },
  {
    family: 'bar',
    word: 'fb',
    spellings: [
      'flb',
      'flach',
      'flachstahl',
      'bfl',
      'plat',
      'fer plat',
      'pletina',
      'flacheisen',
      'breitflachstahl',
      'strip',
      'platstaal',
      'platstaf',
    ],
  },
  {
    family: 'angle',
    word: 'l',
    spellings: [
      'l',
      'angle',
      'ang',
      'winkel',
      'cornière',
      'corniere',
      'angular',
      'wi',
      'winkelstahl',
      'winkelprofil',
      'winkeleisen',
      'hoek',
      'hoekstaal',
      'hoeklijn',
      'hoekprofiel',
    ],
  },
  {
    family: 'round',
    word: 'rb',
    spellings: ['rb', 'rd', 'round', 'rod', 'ø', 'dia', 'round bar', 'rd bar', 'bar round', 'bar rd', 'rnd'],
  },
  {
    family: 'round',
    word: 'rb',
    spellings: ['rund', 'rundstahl', 'rundeisen', 'rond', 'redondo', 'rondstaal', 'rondstaf', 'stab rd'],
  },
  {
    family: 'square',
    word: 'sq',
    spellings: [
      'sq',
      'square',
      'square bar',
      'sq bar',
      'bar square',
      'bar sq',
      'vkt',
      'vierkant',
      'carré',
      'cuadrado',
      ...['vierkantstahl', 'quadratstahl', 'vierkanteisen', 'vierkantstaal', 'vierkantstaf'],
    ],
  },
  { family: 'channel', word: 'c', spellings: ['c', 'channel', 'chan'] },
  { family: 'channel', word: 'mc', spellings: ['mc'] },
  {
    family: 'channel',
    word: 'upn',
    spellings: ['upn', 'unp', 'u', 'u-profil', 'u-stahl', 'u-profiel', 'u-staal'],
  },
  { family: 'channel', word: 'upe', spellings: ['upe'] },
  { family: 'channel', word: 'pfc', spellings: ['pfc'] },
  {
    family: 'tube',
    word: 'hss',
    spellings: ['hss', 'rohr', 'stahlrohr', 'formrohr', 'buis', 'koker', 'kokerprofiel', 'hohlprofil'],
  },
  { family: 'tube', word: 'tube', spellings: ['tube', 'tubing', 'ts', 'tube steel'] },
  {
    family: 'tube',
    word: 'shs',
    spellings: [
      'shs',
      'qro',
      'quadratrohr',
      'vierkantrohr',
      'sq tube',
      'square tube',
      'sq tubing',
      'tube carré',
      'vierkante koker',
    ],
  },
  {
    family: 'tube',
    word: 'rhs',
    spellings: ['rhs', 'rro', 'rechteckrohr', 'rect tube', 'rectangular tube', 'rechthoekige koker'],
  },
  {
    family: 'tube',
    word: 'chs',
    spellings: ['chs', 'ro', 'rundrohr', 'pipe', 'rd tube', 'round tube', 'tube rond', 'ronde buis'],
  },
  { family: 'tee', word: 't', spellings: ['t', 'tee'] },
  ...['w', 's', 'hp', 'm', 'wt', 'st', 'mt', 'ipe', 'ipn', 'he', 'ub', 'uc'].map((word) =>
    beams(word, [word]),
  ),
  beams('w', ['wf']),
  beams('ipn', ['inp']),
  beams('hea', ['hea', 'he-a', 'ipbl']),
  beams('heb', ['heb', 'he-b', 'ipb']),
  beams('hem', ['hem', 'he-m', 'ipbv']),
  { family: 'other', word: 'ubp', spellings: ['ubp', 'pg', 'rsj', 'z', 'rail', 'grating', 'hex'] },
];

function beams(word: string, spellings: readonly string[]) {
  return { family: 'beam' as const, word, spellings };
}

const words = new Map(
  sectionSpellings.flatMap(({ family, word, spellings }) =>
    spellings.map((spelling) => [spelling, { family, word }] as const),
  ),
);

/** The families whose word may also stand behind a size: `3/4 RD`, `3/8 PL X 6`. */
const behindSize = new Set<Family>(['plate', 'bar', 'angle', 'round', 'square']);
const severalWords = [...words.keys()]
  .filter((word) => /[ -]/.test(word))
  .sort((a, b) => b.length - a.length);
const letters = 'a-wyzàâäçèéêëíïñóôöúü';
const leading = new RegExp(`^(?:(?:${severalWords.join('|')})(?![${letters}])|ø|[${letters}]+)`);
const trailing = new RegExp(`(?:(?<![${letters}])(?:${severalWords.join('|')})|[${letters}]+|ø)$`);
/** How the bar was rolled or finished. */
const finish = /^(hrs|crs|hr|cr|cf|ms|galv) /;
/** `203x133x25 UB` and `203x133 UB 25`: the word behind, or before the mass. */
const universalBehind = /^(\d+ ?x ?\d+)(?: ?(u[bc]) ?(?:x ?)?(\d+)(?![\d.])| ?x ?(\d+) ?(u[bc])(?![a-z]))/;
/** Which leg of an angle is vertical, or how two stand back to back. */
const legMark = / ?(llv|llh|llbb|slbb)$/;

/**
 * Takes a section text apart, already in the one spelling of the trade: the word before the sizes (`pl 3/8x6`) or
 * behind one of them (`3/8 pl x 6`, `1 sq bar`), marks that change nothing aside.
 */
export function sectionWords(text: string): SectionWords {
  const rolled = finish.exec(text)?.[1];
  const rest = (rolled === undefined ? text : text.slice(rolled.length + 1))
    .replace(/^4 ?kt(?![a-z])/, 'vkt')
    .replace(universalBehind, '$2$5 $1x$3$4');
  const spelling = leading.exec(rest)?.[0] ?? '';
  const behindWord = rest.slice(spelling.length).replace(/^(?:\. | ?- ?(?=\d)|: ?)/, '');
  const parts = behindWord.split('x').map((part) => part.trim());
  const known = words.get(spelling);
  const read =
    spelling === ''
      ? wordBehindSize(parts)
      : { family: known?.family, word: known?.word ?? spelling, parts, ignored: [] };
  const marked = read.family === 'angle' ? withoutLegMark(read) : withoutPattern(read);
  return { ...marked, ignored: [...(rolled === undefined ? [] : [rolled]), ...marked.ignored].map(upper) };
}

const upper = (mark: string) => mark.toUpperCase();

/** The pattern of a checkered plate adds a little to its mass, which is not counted. */
function withoutPattern(read: SectionWords): SectionWords {
  return read.word === 'chk' ? { ...read, word: 'pl', ignored: ['chk'] } : read;
}

/** `1/2x4` without a word is a flat bar; anything longer may be several things. */
function wordBehindSize(parts: string[]): SectionWords {
  const found = parts.map((part) => sizeAndWord(part));
  const [named, ...others] = found.flatMap((each) => each ?? []);
  if (!named || others.length > 0) {
    return { family: parts.length === 2 ? 'bar' : undefined, word: '', parts, ignored: [] };
  }
  const sizes = parts.map((part, index) => found[index]?.size ?? part);
  return { ...named.of, parts: sizes, ignored: [] };
}

function sizeAndWord(part: string): { size: string; of: { family: Family; word: string } } | undefined {
  const behind = part.replace(/\.$/, '');
  const spelling = trailing.exec(behind)?.[0] ?? '';
  const of = words.get(spelling);
  if (of === undefined || !behindSize.has(of.family) || !/^[\d.,]/.test(part)) return undefined;
  return { size: behind.slice(0, -spelling.length).trim(), of };
}

function withoutLegMark(read: SectionWords): SectionWords {
  const marks = read.parts.flatMap((part) => legMark.exec(part)?.[1] ?? []);
  return { ...read, parts: read.parts.map((part) => part.replace(legMark, '')), ignored: marks };
}
