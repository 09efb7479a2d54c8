import type {
  CustomFunction,
  LoadedFunction,
  LoadedFunctions,
} from '../../headless/functions/loadFunctions.js';
import type { FunctionsMetadata } from '../../headless/functions/metadata.js';
import type { Choices } from '../engine/registerFunctions.js';

const namespace = 'TONROW';

/** What the functions' own script finds in a spreadsheet host. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? '');
  }
}

const ErrorCode = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
  invalidName: '#NAME?',
  invalidReference: '#REF!',
};

interface DescribedMetadata extends FunctionsMetadata {
  enums?: { id: string; values: { stringValue: string; tooltip: string }[] }[];
}

/** Loads the built functions as a host does: their one script, then what describes them. */
export async function loadBuiltFunctions(
  folder: string,
): Promise<{ functions: LoadedFunctions; choices: Choices }> {
  const associated = new Map<string, CustomFunction>();
  const associate = (id: string, call: CustomFunction) => void associated.set(id.toUpperCase(), call);
  Object.assign(globalThis, { CustomFunctions: { Error: HostError, ErrorCode, associate } });
  const [metadata] = await Promise.all([
    fetch(`${folder}functions.json`).then((answer) => answer.json() as Promise<DescribedMetadata>),
    runScript(`${folder}functions.js`),
  ]);
  const byName = new Map<string, LoadedFunction>();
  for (const one of metadata.functions) {
    const call = associated.get(one.id.toUpperCase());
    if (!call) throw new Error(`The functions' script does not associate ${one.id}.`);
    byName.set(one.name.toUpperCase(), { metadata: one, call });
  }
  const functions = { namespace, allowErrors: metadata.allowErrorForDataTypeAny ?? false, byName };
  return { functions, choices: choicesOf(metadata) };
}

function choicesOf({ enums = [] }: DescribedMetadata): Choices {
  return new Map(
    enums.map(({ id, values }) => [
      id,
      values.map(({ stringValue, tooltip }) => ({ value: stringValue, label: tooltip })),
    ]),
  );
}

function runScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.addEventListener('load', () => resolve());
    script.addEventListener('error', () => reject(new Error(`${address} did not load.`)));
    document.head.append(script);
  });
}
