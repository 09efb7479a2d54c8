import vm from 'node:vm';
import type { FunctionsMetadata } from './metadata.js';
import { type LoadedFunctions, ScriptHost } from './scriptHost.js';

/*
 * The built functions outside a host: their script is run with the few objects that the host gives it.
 */

/** Runs the built bundle as the host's runtime would and keeps the functions it associates. */
export function loadFunctions(
  bundle: string,
  metadata: FunctionsMetadata,
  namespace?: string,
): LoadedFunctions {
  const host = new ScriptHost();
  vm.runInThisContext(bundle, { filename: 'functions.js' });
  return host.functions(metadata, namespace);
}
