// npm run pictures: the pictures of docs/ that are drawn from the calculations.
import { ensure } from './ensure.mjs';
import { runSource } from './runSource.mjs';

ensure({ development: true });
await runSource('scripts/pictures/write.ts');
