// Runs the families of stock problems and prints a table. Times are of the processor, not of the wall: other work on the
// machine does not count. Every plan is verified by planStock; the bars of first-fit and best-fit decreasing are counted
// here, apart from the planner.
import { createHash } from 'node:crypto';
import { parseArgs } from 'node:util';
import { planStock } from '../../src/core/stock/planStock.js';
import type { StockPlan } from '../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../src/core/stock/stockProblem.js';
import { loadSolver } from '../../src/planner/highs.js';
import { families } from './stockProblems.js';

const { values } = parseArgs({
  options: {
    /** Every so many only. */
    slice: { type: 'string', default: '1' },
    /** Instances whose name has this text. */
    only: { type: 'string', default: '' },
    /** Prints each instance. */
    each: { type: 'boolean', default: false },
  },
});

interface Result {
  name: string;
  plan: StockPlan;
  seconds: number;
  /** Above the bound, in the cheapest bars; NaN where pieces are short. */
  gapBars: number;
  gapShare: number;
  isFitBetter: boolean;
}

const solver = await loadSolver();

function run(name: string, problem: StockProblem): Result {
  const before = process.cpuUsage();
  const plan = planStock(problem, { solver });
  const { user, system } = process.cpuUsage(before);
  const cheapest = Math.min(...problem.stocks.map(({ price, lengthMm }) => price ?? lengthMm));
  const gap = plan.shortages.length > 0 ? NaN : plan.purchase - plan.bound;
  return {
    name,
    plan,
    seconds: (user + system) / 1e6,
    gapBars: gap / cheapest,
    gapShare: gap / plan.purchase,
    isFitBetter: fitBars(problem) * (problem.stocks[0]?.lengthMm ?? 0) < plan.purchase - 1e-6,
  };
}

/** The fewer bars of first-fit and best-fit decreasing, for one length without price; Infinity for other problems. */
function fitBars({ parts, stocks, kerfMm, trimMm, gripMm }: StockProblem): number {
  const [stock] = stocks;
  const isPlain = stocks.length === 1 && stock?.price === undefined && stock?.available === undefined;
  if (!isPlain || parts.some((part) => part.leanLeftRad !== 0 || part.leanRightRad !== 0)) return Infinity;
  const capacity = (stock?.lengthMm ?? 0) - trimMm - gripMm + (gripMm > 0 ? 0 : kerfMm);
  const pieces = parts.flatMap(({ lengthMm, pieces }) => new Array<number>(pieces).fill(lengthMm + kerfMm));
  pieces.sort((a, b) => b - a);
  const counts = [false, true].map((isBest) => {
    const rooms: number[] = [];
    for (const size of pieces) {
      let at = -1;
      rooms.forEach((room, bar) => {
        if (room < size - 1e-6) return;
        if (at < 0 || (isBest && room < (rooms[at] ?? 0))) at = bar;
      });
      if (at < 0) rooms.push(capacity - size);
      else rooms[at] = (rooms[at] ?? 0) - size;
    }
    return rooms.length;
  });
  return Math.min(...counts);
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? NaN;
}

function row(name: string, results: readonly Result[]): string {
  const short = results.filter(({ plan }) => plan.shortages.length > 0);
  const proven = results.filter(({ plan }) => plan.proof !== undefined);
  const gaps = results.map(({ gapBars }) => gapBars).filter((gap) => !Number.isNaN(gap));
  const shares = results.map(({ gapShare }) => gapShare).filter((gap) => !Number.isNaN(gap));
  const seconds = results.map((result) => result.seconds);
  return [
    name.padEnd(24),
    String(results.length).padStart(9),
    String(proven.length).padStart(7),
    String(short.length).padStart(6),
    Math.max(0, ...gaps)
      .toFixed(2)
      .padStart(10),
    `${(100 * Math.max(0, ...shares)).toFixed(3)}%`.padStart(9),
    median(seconds).toFixed(3).padStart(9),
    Math.max(...seconds)
      .toFixed(2)
      .padStart(9),
    String(results.filter(({ isFitBetter }) => isFitBetter).length).padStart(11),
  ].join('');
}

const slice = Number(values.slice);
const all: Result[] = [];
const plans = createHash('sha256');
console.log(
  'family                  instances proven  short  gap bars  gap in %  median s  worst s  FFD better',
);
for (const { name, problems } of families()) {
  const chosen = problems.filter((each, at) => at % slice === 0 && each.name.includes(values.only));
  if (chosen.length === 0) continue;
  const results = chosen.map((each) => {
    const result = run(each.name, each.make());
    plans.update(JSON.stringify(result.plan));
    if (values.each)
      console.log(
        `  ${each.name.padEnd(36)} ${result.plan.proof ?? '-'} ${result.gapBars.toFixed(3)} ${result.seconds.toFixed(2)} s`,
      );
    return result;
  });
  console.log(row(name, results));
  all.push(...results);
}
console.log(row('all', all));
const worst = [...all].sort((a, b) => b.seconds - a.seconds).slice(0, 8);
console.log(`\nslowest: ${worst.map(({ name, seconds }) => `${name} ${seconds.toFixed(2)} s`).join('; ')}`);
const open = all.filter(({ plan }) => plan.proof === undefined && plan.shortages.length === 0);
if (open.length > 0)
  console.log(`not proven: ${open.map(({ name, gapBars }) => `${name} (${gapBars.toFixed(2)})`).join('; ')}`);
console.log(`plans (SHA-256): ${plans.digest('hex').slice(0, 16)}`);
