import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../../scripts/ensure.mjs';
import { localAddress } from '../../../scripts/manifest/address.mjs';
import { manifestProblems } from '../../../scripts/manifest/check.mjs';
import '../../contract/support/built.js';

export interface Problem {
  name: string;
  message: string;
}

const dist = path.join(root, 'dist');

export function readBuilt(file: string): Buffer | undefined {
  const full = path.join(dist, file);
  return existsSync(full) ? readFileSync(full) : undefined;
}

/** The manifest of the build, and the pieces it is made of. */
export const builtManifest = readFileSync(path.join(dist, 'manifest.xml'), 'utf8');
export const template = readFileSync(path.join(root, 'manifest', 'manifest.xml'), 'utf8');

export const problemsOf = (xml: string, read = readBuilt): Problem[] =>
  manifestProblems(xml, { address: localAddress, read }) as Problem[];

/** The manifest with one text replaced, which must be in it. */
export function changed(from: string, to: string): string {
  if (!builtManifest.includes(from)) throw new Error(`the manifest does not hold ${from}`);
  return builtManifest.replace(from, to);
}
