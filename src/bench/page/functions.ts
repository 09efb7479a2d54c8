import type { FunctionsMetadata } from '../../headless/functions/metadata.js';
import { type LoadedFunctions, ScriptHost } from '../../headless/functions/scriptHost.js';
import type { Choices } from '../engine/registerFunctions.js';

interface DescribedMetadata extends FunctionsMetadata {
  enums?: { id: string; values: { stringValue: string; tooltip: string }[] }[];
}

/** Loads the built functions as a host does: their one script, then what describes them. */
export async function loadBuiltFunctions(
  folder: string,
): Promise<{ functions: LoadedFunctions; choices: Choices }> {
  const host = new ScriptHost();
  const [metadata] = await Promise.all([
    fetch(`${folder}functions.json`).then((answer) => answer.json() as Promise<DescribedMetadata>),
    runScript(`${folder}functions.js`),
  ]);
  return { functions: host.functions(metadata), choices: choicesOf(metadata) };
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
