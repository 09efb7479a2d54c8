import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { localAddress } from '../../scripts/manifest/address.mjs';
import { parseManifest } from '../../scripts/manifest/check.mjs';
import { manifestAddresses } from '../../scripts/manifest/checkAddresses.mjs';
import { namespace } from '../../src/functions/catalog.js';
import { builtManifest, problemsOf, readBuilt, template } from './support/manifest.js';

const document = parseManifest(builtManifest) as Document;
const text = (selector: string) => document.querySelector(selector)?.textContent?.trim();

describe('the manifest of the build', () => {
  it('has no problem', () => {
    expect(problemsOf(builtManifest)).toEqual([]);
  });

  it('names only files that the build holds', () => {
    const addresses = manifestAddresses(document) as string[];
    expect(addresses.length).toBe(8);
    for (const address of addresses) {
      expect(address.startsWith(`${localAddress}/`), address).toBe(true);
      expect(readBuilt(address.slice(localAddress.length + 1))?.length, address).toBeGreaterThan(0);
    }
  });

  it('is the template with its one placeholder filled in', () => {
    expect([...new Set(template.match(/%[^%"]*%/g))]).toEqual(['%ADDRESS%']);
    expect(template).not.toMatch(/"https:/);
    expect(builtManifest).toBe(template.replaceAll('%ADDRESS%', localAddress));
  });

  it('has the version of the project', () => {
    const { version } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as {
      version: string;
    };
    expect(text('OfficeApp > Version')).toBe(`${version}.0`);
  });

  it('offers the functions under the namespace of the catalog', () => {
    const id = document.querySelector('Namespace')?.getAttribute('resid') ?? '';
    expect(document.getElementById(id)?.getAttribute('DefaultValue')).toBe(namespace);
  });

  it('has one pane with an id of its own, which no workbook opens by itself', () => {
    const ids = [...document.querySelectorAll('Action > TaskpaneId')].map(({ textContent }) => textContent);
    expect(ids).toEqual(['Tonrow.Pane']);
  });
});
