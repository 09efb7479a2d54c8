import { writeFileSync } from 'node:fs';
import { gaugePicture } from './gauges.js';

writeFileSync('docs/pictures/gauges.svg', gaugePicture());
console.log('Wrote docs/pictures/gauges.svg');
