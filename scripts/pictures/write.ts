import { writeFileSync } from 'node:fs';
import { gaugePicture } from './gauges.js';
import { headingPicture } from './headings.js';

for (const [name, picture] of Object.entries({ gauges: gaugePicture(), headings: headingPicture() })) {
  writeFileSync(`docs/pictures/${name}.svg`, picture);
  console.log(`Wrote docs/pictures/${name}.svg`);
}
