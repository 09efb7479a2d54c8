// Holds a manifest against the rules. Each problem has a name and one sentence.
import { JSDOM } from 'jsdom';
import { checkAddresses } from './checkAddresses.mjs';
import { checkOrder } from './checkOrder.mjs';
import { checkResources } from './checkResources.mjs';
import { checkValues } from './checkValues.mjs';

const { DOMParser } = new JSDOM('').window;

/** A manifest as a document; undefined where it is not well-formed. */
export function parseManifest(xml) {
  const document = new DOMParser().parseFromString(xml, 'application/xml');
  return document.getElementsByTagName('parsererror').length > 0 ? undefined : document;
}

/**
 * The problems of a manifest, none for a good one. `folder` is where it is hosted: its address, and `read(file)`,
 * which gives the bytes of a file in it, or undefined.
 */
export function manifestProblems(xml, folder) {
  const problems = [];
  const report = (name, message) => problems.push({ name, message });
  const document = parseManifest(xml);
  if (!document) {
    report('not well-formed', 'The manifest is not well-formed XML.');
    return problems;
  }
  for (const check of [checkOrder, checkValues, checkResources]) check(document, report);
  checkAddresses(document, folder, report);
  return problems;
}
