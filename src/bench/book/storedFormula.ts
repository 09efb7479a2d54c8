import { storedFunctionName } from '../../sheet/formula/functionNames.js';
import { refuseUnreadable, rewriteFormula } from '../../sheet/formula/rewrite.js';

/**
 * A formula as files store it (no equals sign): prefixed functions, `[@Mark]` written out with the name of the table it
 * stands in.
 */
export function storedFormula(display: string, namespace: string, table = ''): string {
  return rewriteFormula(withLostReferences(display.replace(/^=/, '')), {
    call: ({ text }) => storedFunctionName(text, namespace),
    unreadable: refuseUnreadable,
    table: ({ name, bracket }) => (name || table) + storedBracket(bracket),
  });
}

/** The grid writes `#REF` for a reference that is lost; texts and names of sheets stay. */
const withLostReferences = (formula: string): string =>
  formula.replaceAll(/"[^"]*"|'[^']*'|#REF(?!!)/g, (piece) => (piece === '#REF' ? '#REF!' : piece));

/** `[@]`, `[@Mark]`, `[@[Mark]:[Press]]`: this row. */
function storedBracket(bracket: string): string {
  const inner = bracket.slice(1, -1).trim();
  if (!inner.startsWith('@')) return bracket;
  const rest = inner.slice(1).trim();
  if (rest === '') return '[#This Row]';
  return `[[#This Row],${rest.startsWith('[') ? rest : `[${rest}]`}]`;
}
