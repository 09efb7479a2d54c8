import { wordTable } from '../../quantity/wordTable.js';

const wordOf: Readonly<Record<string, string>> = wordTable({
  ...{ lang: 'long', langer: 'long', langen: 'long', lange: 'long', groß: 'long', großer: 'long' },
  ...{ kurz: 'short', kurzer: 'short', kurzen: 'short', kort: 'short', korte: 'short' },
  ...{
    steg: 'web',
    lijf: 'web',
    flansch: 'flange',
    flg: 'flange',
    fl: 'flange',
    flens: 'flange',
    gurt: 'flange',
  },
  ...{ beide: 'both', beiden: 'both', 'both legs': 'both', ll: 'long', sl: 'short' },
});
const noun = / ?\b(?:legs?|schenkel|been|poot)\b\.? ?/i;

/** The leg alone, in the words of the core: `long` of `long leg` and `langer Schenkel`, `4` of `4 leg` and `leg 4`. */
export function legText(text: string): string {
  const alone = text.replace(/^(?:the|im|am|in|de|het|der) /i, '').replace(noun, '');
  return wordOf[alone.toLowerCase()] ?? alone;
}
