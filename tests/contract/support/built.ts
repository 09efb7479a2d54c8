import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensureBuild, root } from '../../../scripts/ensure.mjs';
import type {
  FunctionMetadata,
  FunctionsMetadata,
  ParameterMetadata,
} from '../../../src/headless/functions/metadata.js';

export interface EnumMetadata {
  id: string;
  type: string;
  values: { name: string; stringValue: string; tooltip: string }[];
}

type BuiltFunction = Omit<FunctionMetadata, 'parameters'> & {
  parameters: (ParameterMetadata & { customEnumId?: string })[];
};

export interface BuiltMetadata extends Omit<FunctionsMetadata, 'functions'> {
  enums: EnumMetadata[];
  functions: BuiltFunction[];
}

const longestWaitMs = 500_000;

/** Test files run side by side: one of them builds, the others wait for it. */
function buildOnce(): void {
  const lock = path.join(root, 'out', 'build.lock');
  mkdirSync(path.dirname(lock), { recursive: true });
  const giveUpAt = Date.now() + longestWaitMs;
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      // Whoever holds it this long was ended while building.
      if (Date.now() > giveUpAt) break;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
    }
  }
  try {
    ensureBuild();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

buildOnce();
const built = (file: string) => readFileSync(path.join(root, 'dist', file), 'utf8');

/** The script and the metadata that the host loads. */
export const bundle = built('functions.js');
export const metadata = JSON.parse(built('functions.json')) as BuiltMetadata;

export function metadataOf(name: string): FunctionMetadata {
  const found = metadata.functions.find((each) => each.name === name);
  if (!found) throw new Error(`the metadata have no function ${name}`);
  return found;
}
