// npm run --silent calc -- [--json] [--workbook FILE] ['=TONROW.…' …]
import { ensure } from './ensure.mjs';

ensure();
// `| head -1` takes what it wants and goes.
process.stdout.on('error', (error) => process.exit(error.code === 'EPIPE' ? 0 : 1));
const { calc } = await import('../dist/calc.mjs');
process.exitCode = await calc(process.argv.slice(2));
