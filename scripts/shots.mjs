// npm run shots: pictures of every place of the pane and of the bench, into out/shots.
import { buildBench } from './bench.mjs';
import { ensure } from './ensure.mjs';
import { runSource } from './runSource.mjs';

ensure({ development: true });
await buildBench();
await runSource('scripts/shots.ts');
