// npm run --silent cards -- IN.xlsx OUT.html [--press NAME] [--marks A,B]
import { ensure } from './ensure.mjs';

ensure();
// `| head -1` takes what it wants and goes.
process.stdout.on('error', (error) => process.exit(error.code === 'EPIPE' ? 0 : 1));
const { cards } = await import('../dist/headless.mjs');
process.exitCode = await cards(process.argv.slice(2));
