import { readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../../scripts/ensure.mjs';
import { assembleAddIn } from '../../../scripts/package/assemble.mjs';
import { hostedFiles } from '../../../scripts/package/hostedFiles.mjs';
import '../../contract/support/built.js';
import type { Files } from './httpsHost.js';

const template = readFileSync(path.join(root, 'manifest', 'manifest.xml'), 'utf8');

/** The package of the current build for an address. */
export const packagedFor = async (address: string): Promise<Files> =>
  hostedFiles(await assembled(), template, address) as Files;

let folder: Promise<string> | undefined;
const assembled = () => (folder ??= assembleAddIn());
