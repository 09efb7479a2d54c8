import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { plannerThreads } from '../planner/plannerThreads.js';
import { loadFunctions } from './loadFunctions.js';
import type { LoadedFunctions } from './scriptHost.js';
import type { FunctionsMetadata } from './metadata.js';

/**
 * Loads the built functions; they lie beside this file's own bundle. Node has no workers of a browser: bars are planned
 * in a thread, which is started by the first plan.
 */
export async function builtFunctions(folder: string = import.meta.dirname): Promise<LoadedFunctions> {
  const [bundle, metadata] = await Promise.all(
    ['functions.js', 'functions.json'].map((name) => readFile(path.join(folder, name), 'utf8')),
  );
  Object.assign(globalThis, { tonrowOpenPlanner: plannerThreads(folder) });
  return loadFunctions(bundle as string, JSON.parse(metadata as string) as FunctionsMetadata);
}
