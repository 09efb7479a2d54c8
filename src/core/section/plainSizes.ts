const namedThickness = /(?<![a-z])t ?= ?(\d[\d.,/-]*(?: ?(?:mm|in|"))?)/;
const strokes = /^([^\d/x]+)(\d+(?:[.,]\d+)?(?:\/\d+(?:[.,]\d+)?)+)$/;
const markBehindWord = /^([a-zäöü]{2}[a-zäöü.]*) ?ø ?(?=\d)/;
const pointBehindWord = /^([a-zäöü]+)\.(?=\d)/;

/**
 * A section text with an `x` between its sizes, the thickness first where it is named: `BL t=10 200x300`. In mm strokes
 * part sizes as well, `FL 80/10`, `L 80/80/8`, and a point behind the word is the word's, `Fl.80x10`; in inches they are
 * those of `3/8` and `.375`. The mark in `Rohr Ø60,3x3,2` says nothing. Common practice, no source.
 */
export function plainSizes(text: string, inMm: boolean): string {
  const named = text.includes('=') ? namedThickness.exec(text) : null;
  if (named) return thicknessFirst(text, named);
  const marked = text.replace(markBehindWord, '$1 ');
  if (!inMm) return marked;
  const pointed = marked.replace(pointBehindWord, '$1 ');
  const [, name = '', sizes] = strokes.exec(pointed) ?? [];
  return sizes === undefined || isInchFraction(sizes) ? pointed : `${name}${sizes.replaceAll('/', 'x')}`;
}

function thicknessFirst(text: string, named: RegExpExecArray): string {
  const [whole, thickness = ''] = named;
  const around = [text.slice(0, named.index), text.slice(named.index + whole.length)];
  const [before = '', behind = ''] = around.map((part) => part.replace(/^[ ,x]+/, '').replace(/[ ,]+$/, ''));
  const word = before.replace(/\d.*$/, '').trim();
  const sizes = [thickness, before.slice(before.search(/\d|$/)), behind];
  return `${word} ${sizes.filter((size) => size !== '').join('x')}`;
}

/** `3/8`: a proper fraction with a denominator that is a power of 2. */
function isInchFraction(text: string): boolean {
  const [over = 0, under = 0, ...more] = text.split('/').map(Number);
  return more.length === 0 && over < under && [2, 4, 8, 16, 32, 64].includes(under);
}
