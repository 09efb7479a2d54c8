// npm run --silent stock -- IN.xlsx [OUT.xlsx] [--json] [--common-lengths] [--without-failing] [--without-off-press] [--without-hidden] [--replace]
import { ensure } from './ensure.mjs';

ensure();
const { stock } = await import('../dist/headless.mjs');
process.exitCode = await stock(process.argv.slice(2));
