// npm run bench:page [-- --rows 20000]: the tasks that hold up the page while a long list is
// opened, checked, edited and saved.
import { buildBench } from '../bench.mjs';
import { ensure } from '../ensure.mjs';
import { runSource } from '../runSource.mjs';

ensure({ development: true });
await buildBench();
await runSource('scripts/bench/page.ts');
