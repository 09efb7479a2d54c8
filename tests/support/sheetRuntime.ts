import { catalog } from '../../src/functions/catalog.js';
import type { HostInput } from '../../src/functions/descriptor/hostValue.js';
import { ColdStart } from '../../src/functions/shop/coldStart.js';
import { ShopRegistry } from '../../src/functions/shop/registry.js';
import { type Runtime, type SheetErrorCode, type SheetResult, wrap } from '../../src/functions/wrapper.js';
import type { Shop } from '../../src/core/shop/readShop.js';
import { planStock } from '../../src/core/stock/planStock.js';
import { loadSolver } from '../../src/planner/highs.js';
import type { PlanInWorker } from '../../src/planner/planQueue.js';

/** The error a sheet shows, as this runtime throws it. */
export class SheetError extends Error {
  constructor(
    readonly code: SheetErrorCode,
    message: string,
  ) {
    super(message);
  }
}

/** Plans in the same thread. */
const planHere: PlanInWorker = async (problem) => planStock(problem, { solver: await solver() });
let loading: ReturnType<typeof loadSolver> | undefined;
const solver = () => (loading ??= loadSolver());

/** The wrapped functions in a runtime of their own, with some shops known to it. */
export class SheetRuntime {
  readonly runtime: Runtime;

  constructor(...shops: Shop[]) {
    const registry = new ShopRegistry();
    for (const shop of shops) registry.register(shop);
    this.runtime = {
      catalog,
      shops: registry,
      coldStart: new ColdStart(registry, undefined),
      plan: planHere,
      error: (code, message) => new SheetError(code, message),
    };
  }

  /** The result of a function; throws the sheet's error. */
  call(name: string, ...inputs: HostInput[]): SheetResult | Promise<SheetResult> {
    const descriptor = catalog.find((each) => each.name === name);
    if (!descriptor) throw new Error(`there is no function ${name}`);
    return wrap(descriptor, this.runtime)(...inputs);
  }

  /** The result of a function that may answer later. */
  async answer(name: string, ...inputs: HostInput[]): Promise<SheetResult> {
    return this.call(name, ...inputs);
  }

  /** A result that must be a number. */
  number(name: string, ...inputs: HostInput[]): number {
    const result = this.call(name, ...inputs);
    if (typeof result === 'number') return result;
    throw new Error(`${name} gave no number: ${JSON.stringify(result)}`);
  }

  /** The error a call ends in; a result is an error of the test. */
  error(name: string, ...inputs: HostInput[]): SheetError {
    let result: unknown;
    try {
      result = this.call(name, ...inputs);
    } catch (error) {
      if (error instanceof SheetError) return error;
      throw error;
    }
    throw new Error(`${name} was not refused: ${JSON.stringify(result)}`);
  }
}
