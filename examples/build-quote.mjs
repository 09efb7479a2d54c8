// Builds the example quote workbook from the sources in examples/quote/.
// node examples/build-quote.mjs [OUT] [--without-offer]
// OUT is examples/quote.xlsx unless given; --without-offer leaves out what offers the add-in to a recipient.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { quoteWorkbook } from './build/workbook.mjs';

const { values, positionals } = parseArgs({
  options: { 'without-offer': { type: 'boolean', default: false } },
  allowPositionals: true,
});
const out = positionals[0] ?? path.join(import.meta.dirname, 'quote.xlsx');
const offerAddIn = !values['without-offer'];
writeFileSync(out, quoteWorkbook(path.join(import.meta.dirname, 'quote'), { offerAddIn }));
console.log(`Wrote ${out}`);
