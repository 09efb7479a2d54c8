import { catalog } from './catalog.js';
import { giveWay } from './giveWay.js';
import { openBrowserWorker } from '../planner/browserWorker.js';
import { PlanQueue } from '../planner/planQueue.js';
import type { OpenPlanner } from '../planner/protocol.js';
import { ColdStart } from './shop/coldStart.js';
import { recalculateWorkbook } from './shop/recalculateWorkbook.js';
import { readShopFromWorkbook } from './shop/readShopFromWorkbook.js';
import { ShopRegistry } from './shop/registry.js';
import { StartUp } from './shop/startUp.js';
import type { HostInput } from './descriptor/hostValue.js';
import { helpForPane, type Runtime, type SheetErrorCode, workingForPane, wrap } from './wrapper.js';

/*
 * The script that the host loads. A descriptor says all there is to say of a function, the wrapper is what
 * the host calls; `argument` reads, `shop` finds the shop of a stamp.
 */

// The one classic script the host loads: every function is associated before the script ends.
const shops = new ShopRegistry();
const startUp = new StartUp(readShopFromWorkbook, recalculateWorkbook);
const coldStart = new ColdStart(shops, startUp.readTables, startUp.recalculate);

/** A program that has no workers of a browser brings a planner of its own. */
const openPlanner: OpenPlanner = (hear) =>
  ((globalThis as { tonrowOpenPlanner?: OpenPlanner }).tonrowOpenPlanner ?? openBrowserWorker)(hear);

const runtime: Runtime = {
  catalog,
  shops,
  coldStart,
  plan: new PlanQueue(openPlanner).plan,
  // Only beside a pane in a host does anybody wait for a turn: the bench hands long lists over in pieces.
  ...('Office' in globalThis && { giveWay }),
  error: (code: SheetErrorCode, message: string) => {
    const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
    return new CustomFunctions.Error(code === '#N/A' ? notAvailable : invalidValue, message);
  },
};

for (const descriptor of catalog) CustomFunctions.associate(descriptor.name, wrap(descriptor, runtime));

// The workbook's shop is read once, at once; the pane, in the same runtime, shows what came of it, and the steps
// of the calls it is shown.
const workingOf = (name: string, inputs: readonly HostInput[]) => workingForPane(name, inputs, runtime);
const helpOf = (name: string) => helpForPane(name, runtime);
Object.assign(globalThis, { tonrowStartUp: startUp, tonrowWorkings: { workingOf, helpOf } });
void coldStart.begin();
