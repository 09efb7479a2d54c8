import { tradeText } from '../../quantity/tradeText.js';
import { type WorkKind, workKindsOf } from './workWords.js';

/** What a text in a list says of work on a part. */
export interface WorkText {
  kinds: readonly WorkKind[];
  /** It says more than what was done: a size, a count or a place of it, or what somebody is to do. */
  isDetailed: boolean;
  /** It is what parts are called: `Punched plates`. */
  isName: boolean;
}

const many = 'both|each|ea|all|one|two|three|four|this|that|other|far|near|opp|opposite|same';
const ofSides =
  'ends?|sides?|flanges?|webs?|legs?|edges?|corners?|faces?|top|bottom|btm|left|right|lh|rh|heel|toe';
const told =
  'see|notes?|noted|only|field|shop|detail|det|dtl|dwg|drawing|sketch|shown|required|req|reqd|unless|add|make|provide|match|beidseitig|siehe|beide|zie';
const little =
  'w|with|without|and|or|of|on|at|in|out|up|down|off|to|for|from|per|by|as|after|before|the|an?|is|are|be|not|no|if|thru|through|x|dia|deg|mm|inch|inches|ft|places?|times|je|ende|enden|seite|links|rechts|typ|typical|std|standard';
const tells = new RegExp(`^(?:${told}|${many})$`);
/** Words that no thing is called by. */
const isClosed = new RegExp(`^(?:${many}|${ofSides}|${told}|${little})$`);
/** `both ends`, `far side`, and not `left`, which may be one in a building. */
const place = new RegExp(`(?<!\\p{L})(?:${many})\\.? (?:of )?(?:the )?(?:${ofSides})(?!\\p{L})`, 'u');
const size = /\d ?[x×*/"'″′°]|\d ?(?:deg|mm)\b|\d[-.,]\d|ø|(?<![\p{L}\d])45(?!\d)/u;
const hasBeenDone = /(?:ed|bent|cut|sawn|sunk|csk|burnt|galv|hdg)$|^ge\p{L}+e[nrs]?$/u;
/** What has its work in its name: `Lochblech`, `Kantteil`. */
const namesPart = /(?:blech|teil|platte|profil|rahmen|winkel)(?:en?|er|[ns])?$/u;
const listOfWork = /(?<!\p{L})(?:lists?|schedules?|log)$/u;
const longest = 300;

/**
 * What a text says of work on a part; undefined where it names none. A text is what parts are called where each word of
 * work stands before the thing it was done to, `bent and slotted angles`, and nothing more is said of the work.
 */
export function workText(typed: string): WorkText | undefined {
  const text = tradeText(typed.slice(0, longest));
  const kinds = workKindsOf(text);
  const words = wordsOf(text);
  if (kinds.length === 0) {
    const isPlace = place.test(text) && words.every((word) => isClosed.test(word));
    return isPlace ? { kinds, isDetailed: true, isName: false } : undefined;
  }
  const isDetailed =
    size.test(text) ||
    place.test(text) ||
    words.some((word) => tells.test(word) || (kinds.includes('clip') && /^clips?$/.test(word))) ||
    countsWork(text);
  const isName = !isDetailed && (listOfWork.test(text) || phrasesOf(text).every(isNamePhrase));
  return { kinds, isDetailed, isName };
}

const wordsOf = (text: string): string[] => text.match(/\p{L}+(?:'\p{L}+)*/gu) ?? [];
const isWork = (word: string) => workKindsOf(word).length > 0;

/** `bent, punched plates` is one phrase. */
function phrasesOf(text: string): string[] {
  const joined = text.replace(/(\p{L}+),/gu, (whole, word: string) => (isWork(word) ? `${word} and` : whole));
  return joined.split(/[,;:()]| - /);
}

/** `4 holes`, `(2) csk`. */
function countsWork(text: string): boolean {
  return [...text.matchAll(/\d[)-]? ?[@x]? ?(\p{L}+)/gu)].some(([, word = '']) => isWork(word));
}

function isNamePhrase(phrase: string): boolean {
  const words = wordsOf(phrase);
  return words.every((word, at) => {
    if (!isWork(word)) return true;
    const next = words
      .slice(at + 1)
      .find((each) => each !== 'and' && !(isWork(each) && hasBeenDone.test(each)));
    const isOfThing = next !== undefined && !isClosed.test(next) && (!isWork(next) || namesPart.test(next));
    return namesPart.test(word) || (hasBeenDone.test(word) && isOfThing);
  });
}
