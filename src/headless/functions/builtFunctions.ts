import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { loadFunctions } from './loadFunctions.js';
import type { LoadedFunctions } from './scriptHost.js';
import type { FunctionsMetadata } from './metadata.js';

/** Loads the built functions; they lie beside this file's own bundle. */
export async function builtFunctions(folder: string = import.meta.dirname): Promise<LoadedFunctions> {
  const [bundle, metadata] = await Promise.all(
    ['functions.js', 'functions.json'].map((name) => readFile(path.join(folder, name), 'utf8')),
  );
  return loadFunctions(bundle as string, JSON.parse(metadata as string) as FunctionsMetadata);
}
