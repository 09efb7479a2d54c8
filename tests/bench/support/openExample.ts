import './engineOnNode.js';
import { readFileSync } from 'node:fs';
import { registerFunctions } from '../../../src/bench/engine/registerFunctions.js';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { loadFunctions } from '../../../src/headless/functions/loadFunctions.js';
import { bundle, metadata } from '../../contract/support/built.js';

const root = new URL('../../../', import.meta.url);

export const functions = loadFunctions(bundle, metadata);
registerFunctions(functions, new Map(), () => undefined);

export const exampleBytes = (): Uint8Array =>
  new Uint8Array(readFileSync(new URL('examples/quote.xlsx', root)));

/** The example quote as the page opens it. */
export const openExample = (): OpenBook => openBook(exampleBytes(), functions);
