import { tokenize } from '../../sheet/formula/tokens.js';

/** Functions that files name with a prefix, because they came after the format. */
const later = new Set(
  `
    ACOT ACOTH ARABIC BASE CEILING.MATH COMBINA CONCAT COT COTH CSC CSCH DAYS DECIMAL FLOOR.MATH FORECAST.LINEAR
    HSTACK IFNA IFS ISFORMULA ISOWEEKNUM MAXIFS MINIFS MUNIT NUMBERVALUE PERCENTILE.EXC PERCENTILE.INC
    QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ SEC SECH SEQUENCE SHEET SHEETS STDEV.P STDEV.S SWITCH
    TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VAR.P VAR.S VSTACK WRAPCOLS
    WRAPROWS XLOOKUP XMATCH XOR CHOOSECOLS CHOOSEROWS EXPAND TAKE DROP LET LAMBDA
  `
    .trim()
    .split(/\s+/),
);
const ofWorksheets = new Set(['FILTER', 'SORT', 'SORTBY']);

/**
 * A formula as files store it (no equals sign): prefixed functions, `[@Mark]` written out with the name of the table it
 * stands in.
 */
export function storedFormula(display: string, namespace: string, table = ''): string {
  const tokens = tokenize(withLostReferences(display.replace(/^=/, '')));
  return tokens
    .map(({ kind, text, spaced }, at) => {
      const isNamed = tokens[at - 1]?.kind === 'word' && !spaced;
      const written =
        kind === 'function'
          ? storedName(text, namespace)
          : kind === 'bracket'
            ? `${isNamed ? '' : table}${storedBracket(text)}`
            : text;
      return (spaced ? ' ' : '') + written;
    })
    .join('');
}

/** The grid writes `#REF` for a reference that is lost; texts and names of sheets stay. */
const withLostReferences = (formula: string): string =>
  formula.replaceAll(/"[^"]*"|'[^']*'|#REF(?!!)/g, (piece) => (piece === '#REF' ? '#REF!' : piece));

function storedName(name: string, namespace: string): string {
  const upper = name.toUpperCase();
  if (upper.startsWith(`${namespace}.`)) return `_xldudf_${namespace}_${upper.slice(namespace.length + 1)}`;
  if (ofWorksheets.has(upper)) return `_xlfn._xlws.${upper}`;
  return later.has(upper) ? `_xlfn.${upper}` : name;
}

/** `[@]`, `[@Mark]`, `[@[Mark]:[Press]]`: this row. */
function storedBracket(bracket: string): string {
  const inner = bracket.slice(1, -1).trim();
  if (!inner.startsWith('@')) return bracket;
  const rest = inner.slice(1).trim();
  if (rest === '') return '[#This Row]';
  return `[[#This Row],${rest.startsWith('[') ? rest : `[${rest}]`}]`;
}
