import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { fuzzKinds } from './fuzzKinds.js';
import { thrown } from './kind.js';
import { Random } from './random.js';

/*
 * Tries calls of all kinds, in a thread that is watched: what does not come back is a find too. Each call hangs on the
 * seed, its kind and its number only, so that one alone can be tried again.
 */

interface Plan {
  seed: number;
  calls: number;
  only: string | undefined;
  from: number;
}

type News = { at: number; kind: string } & ({ begun: unknown } | { find: string } | { ended: true });

const root = process.cwd();
const patienceMs = 30_000;
/** Processor time that one call may take. */
const mostMs = 2_000;
const kindNames = ['functions', 'rows', 'packages', 'formulas', 'copies'];

if (isMainThread) await watch(readPlan());
else await work(workerData as Plan);

function readPlan(): Plan {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({ options: { seed: text, calls: text, only: text, at: text } });
  const [seed, calls, at] = [values.seed ?? '1', values.calls ?? '10000', values.at ?? '0'].map(Number);
  const only = values.only;
  if (![seed, calls, at].every(Number.isInteger))
    throw new Error('--seed, --calls and --at take whole numbers.');
  if (only !== undefined && !kindNames.includes(only))
    throw new Error(`--only takes ${kindNames.join(', ')}, not ${only}.`);
  return {
    seed: seed ?? 1,
    calls: values.at === undefined ? (calls ?? 0) : (at ?? 0) + 1,
    only,
    from: at ?? 0,
  };
}

async function work({ seed, calls, only, from }: Plan): Promise<void> {
  const tell = (news: News) => parentPort?.postMessage(news);
  const kinds = await fuzzKinds(root);
  const chosen = kinds.filter(({ name }) => only === undefined || name === only);
  for (let at = from; at < calls; at++)
    for (const { name, call } of chosen) {
      let input: unknown;
      const began = process.cpuUsage();
      const wrong = await call(new Random(seed, name, at), (kept) => (input = kept)).catch(thrown);
      const find = wrong ?? tooLong(process.cpuUsage(began));
      if (find !== undefined) {
        tell({ at, kind: name, begun: sendable(input) });
        tell({ at, kind: name, find });
      }
      // Now and then, so that the watch knows how far it is.
      if (at % 100 === 0 || find !== undefined) tell({ at, kind: name, begun: undefined });
    }
  tell({ at: calls, kind: '', ended: true });
}

/** An input without its functions, which cannot leave the thread. */
const sendable = (input: unknown): unknown =>
  input instanceof Uint8Array || input === undefined ? input : JSON.parse(JSON.stringify(input));

/** Only here: a test that runs while others do must not hang on time. */
function tooLong({ user, system }: NodeJS.CpuUsage): string | undefined {
  return (user + system) / 1000 > mostMs ? `takes ${((user + system) / 1e6).toFixed(1)} s` : undefined;
}

async function watch(plan: Plan): Promise<void> {
  let { from } = plan;
  let finds = 0;
  while (from < plan.calls) {
    const after = await runFrom({ ...plan, from }, () => finds++);
    if (after === undefined) break;
    from = after;
  }
  console.log(`${plan.calls - plan.from} calls of each kind with seed ${plan.seed}: ${finds} finds.`);
  process.exitCode = finds > 0 ? 1 : 0;
}

/** Runs until the end, undefined, or until a call does not come back: then from where to go on. */
function runFrom(plan: Plan, count: () => void): Promise<number | undefined> {
  return new Promise((resolve) => {
    const thread = new Worker(fileURLToPath(import.meta.url), { workerData: plan, execArgv: [] });
    let last = { at: plan.from, kind: '' };
    let input: unknown;
    let timer: NodeJS.Timeout | undefined;
    const lost = (why: string) => {
      clearTimeout(timer);
      count();
      console.log(`Between ${last.kind} ${last.at} and ${last.at + 100}: ${why}.`);
      void thread.terminate();
      resolve(last.at + 101);
    };
    const wait = () => {
      clearTimeout(timer);
      timer = setTimeout(() => lost('a call does not come back'), 4 * patienceMs);
    };
    wait();
    thread.on('error', (error) => lost(`the thread ends: ${error.message}`));
    thread.on('message', (news: News) => {
      wait();
      last = news;
      if ('ended' in news) {
        clearTimeout(timer);
        resolve(undefined);
        void thread.terminate();
      } else if ('find' in news) {
        count();
        console.log(`${news.kind} ${news.at}: ${news.find}`);
        console.log(`  input: ${kept(input, `${plan.seed}-${news.kind}-${news.at}`)}`);
        console.log(`  again: npm run fuzz -- --seed ${plan.seed} --only ${news.kind} --at ${news.at}`);
      } else input = news.begun;
    });
  });
}

/** The input of a find: in a file where it is a package, else as text. */
function kept(input: unknown, name: string): string {
  if (!(input instanceof Uint8Array)) return JSON.stringify(input)?.slice(0, 1500) ?? '';
  const file = path.join(root, 'out', 'fuzz', `${name}.xlsx`);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, input);
  return file;
}
