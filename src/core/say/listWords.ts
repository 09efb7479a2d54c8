/** Several things as a sentence names them: `End, Pitch and Gage`. */
export function listWords(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
