import { readFileSync } from 'node:fs';
import path from 'node:path';
import { loadFunctions, type FunctionsMetadata, type LoadedFunctions } from '../../../src/headless/index.js';

const here = import.meta.dirname;
export const sampleScript = readFileSync(path.join(here, 'functions.js'), 'utf8');
export const sampleMetadata = JSON.parse(
  readFileSync(path.join(here, 'functions.json'), 'utf8'),
) as FunctionsMetadata;

/** The sample functions, loaded as a built bundle is. */
export const sampleFunctions = (): LoadedFunctions => loadFunctions(sampleScript, sampleMetadata);
