/** The arguments of a call as written: splits at commas outside brackets and quotes; undefined where a bracket closes that was not opened. */
export function splitArguments(text: string): string[] | undefined {
  const parts: string[] = [''];
  let depth = 0;
  let quote = '';
  for (const character of text) {
    if (quote !== '') quote = character === quote ? '' : quote;
    else if (character === '"' || (character === "'" && depth === 0)) quote = character;
    else if ('[({'.includes(character)) depth += 1;
    else if ('])}'.includes(character)) depth -= 1;
    if (depth < 0) return undefined;
    if (character === ',' && depth === 0 && quote === '') parts.push('');
    else parts[parts.length - 1] += character;
  }
  const trimmed = parts.map((part) => part.trim());
  return trimmed.length === 1 && trimmed[0] === '' ? [] : trimmed;
}
