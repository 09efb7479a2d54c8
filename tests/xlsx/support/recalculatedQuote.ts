import { recalculatedQuote } from '../../golden/quote.js';

/** The example quote with every value calculated through the built functions. */
export async function recalculatedQuoteFile(): Promise<Uint8Array> {
  return (await recalculatedQuote()).bytes;
}
