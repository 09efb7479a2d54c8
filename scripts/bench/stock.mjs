// npm run bench:stock [-- --slice N] [--only TEXT] [--each]: how good and how fast the solver of stock plans is.
import { ensurePackages } from '../ensure.mjs';
import { runSource } from '../runSource.mjs';

ensurePackages();
await runSource('scripts/bench/stock.ts');
