// npm run bench:load: sizes of what the host loads, and how soon a function answers, from a server on this machine.
import { ensure } from '../ensure.mjs';
import { assembleAddIn } from '../package/assemble.mjs';
import { runSource } from '../runSource.mjs';

ensure({ development: true });
process.env.TONROW_ADDIN = await assembleAddIn();
await runSource('scripts/bench/load.ts');
