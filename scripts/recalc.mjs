// npm run --silent recalc -- IN.xlsx [OUT.xlsx] [--json]
import { ensure } from './ensure.mjs';

ensure();
const { recalc } = await import('../dist/headless.mjs');
process.exitCode = await recalc(process.argv.slice(2));
