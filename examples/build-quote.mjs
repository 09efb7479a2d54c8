// Builds the example quote workbook from the sources in examples/quote/.
// node examples/build-quote.mjs [OUT]      (OUT is examples/quote.xlsx unless given)
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { quoteWorkbook } from './build/workbook.mjs';

const out = process.argv[2] ?? path.join(import.meta.dirname, 'quote.xlsx');
writeFileSync(out, quoteWorkbook(path.join(import.meta.dirname, 'quote')));
console.log(`Wrote ${out}`);
