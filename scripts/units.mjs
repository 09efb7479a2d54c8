// npm run units: writes src/core/quantity/unitFactors.ts from the unit library, so that nothing imports the library
// when it runs.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './ensure.mjs';
import { unitFactorsSource } from './units/source.mjs';

const file = 'src/core/quantity/unitFactors.ts';
writeFileSync(path.join(root, file), unitFactorsSource());
console.log(`Wrote ${file}`);
