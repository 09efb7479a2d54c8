// npm run --silent recalc -- IN.xlsx [OUT.xlsx] [--json]
// npm run --silent recalc -- FILES and FOLDERS --out FOLDER [--jobs N] [--again] [--shop SHOP.xlsx] [--json]
import { ensure } from './ensure.mjs';

ensure();
// `| head -1` takes what it wants and goes.
process.stdout.on('error', (error) => process.exit(error.code === 'EPIPE' ? 0 : 1));
const { recalc } = await import('../dist/headless.mjs');
process.exitCode = await recalc(process.argv.slice(2));
