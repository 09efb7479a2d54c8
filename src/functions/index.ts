import { catalogue } from './catalogue.js';
import { ColdStart } from './shop/coldStart.js';
import { readShopFromWorkbook } from './shop/readShopFromWorkbook.js';
import { ShopRegistry } from './shop/registry.js';
import { StartUp } from './shop/startUp.js';
import { type Runtime, type SheetErrorCode, wrap } from './wrapper.js';

// The one classic script the host loads: every function is associated before the script ends.
const shops = new ShopRegistry();
const startUp = new StartUp(readShopFromWorkbook);
const coldStart = new ColdStart(shops, startUp.readTables);

const runtime: Runtime = {
  catalogue,
  shops,
  coldStart,
  error: (code: SheetErrorCode, message: string) => {
    const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
    return new CustomFunctions.Error(code === '#N/A' ? notAvailable : invalidValue, message);
  },
};

for (const descriptor of catalogue) CustomFunctions.associate(descriptor.name, wrap(descriptor, runtime));

// The workbook's shop is read once, at once; the pane, in the same runtime, shows what came of it.
Object.assign(globalThis, { tonrowStartUp: startUp });
void coldStart.begin();
