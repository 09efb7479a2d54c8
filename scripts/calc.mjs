// npm run --silent calc -- [--json] [--workbook FILE] ['=TONROW.…' …]
import { ensure } from './ensure.mjs';

ensure();
const { calc } = await import('../dist/headless.mjs');
process.exitCode = await calc(process.argv.slice(2));
