// npm run --silent cards -- IN.xlsx OUT.html [--press NAME] [--marks A,B]
import { ensure } from './ensure.mjs';

ensure();
const { cards } = await import('../dist/headless.mjs');
process.exitCode = await cards(process.argv.slice(2));
