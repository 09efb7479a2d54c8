import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import addFormats from 'ajv-formats';
import Ajv from 'ajv-draft-04';
import { describe, expect, it } from 'vitest';
import { parseManifest } from '../../scripts/manifest/check.mjs';
import { schemaVersion, unifiedManifest } from '../../scripts/manifest/unified.mjs';
import { metadata } from '../contract/support/built.js';
import { builtManifest, changed } from './support/manifest.js';

const folder = path.dirname(createRequire(import.meta.url).resolve('@microsoft/app-manifest/package.json'));
const schemaFile = path.join(folder, `build/json-schemas/teams/v${schemaVersion}/MicrosoftTeams.schema.json`);
// Two escapes in the schema's patterns are none of the language's.
const schema = JSON.parse(
  readFileSync(schemaFile, 'utf8').replaceAll('\\a', '\\u0007').replaceAll('\\v', '\\u000b'),
) as Record<string, unknown>;
const ajv = new Ajv({ strict: false, allErrors: true });
addFormats(ajv);
const check = ajv.compile(schema);

function faults(xml: string): string[] {
  check(unifiedManifest(parseManifest(xml), metadata));
  return (check.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

describe('the unified manifest derived from the manifest', () => {
  it('fits the published schema', () => {
    expect(faults(builtManifest)).toEqual([]);
  });

  it('holds every function, the button, its icons and its page', () => {
    const [extension] = unifiedManifest(parseManifest(builtManifest), metadata).extensions;
    const [runtime] = extension?.runtimes ?? [];
    expect(runtime?.customFunctions.functions.length).toBe(metadata.functions.length);
    expect(runtime?.code.page).toMatch(/taskpane\.html$/);
    const [group] = extension?.ribbons[0]?.tabs[0]?.groups ?? [];
    expect(group?.controls[0]?.icons.map(({ size }: { size: number }) => size)).toEqual([16, 32, 80]);
    expect(group?.controls[0]?.actionId).toBe(runtime?.actions[0]?.id);
  });

  it.each([
    ['an id that is no GUID', changed('5b0d7c1e-', '5b0d7c1-')],
    ['a page without encryption', builtManifest.replaceAll('https://localhost', 'http://localhost')],
    ['a lifetime nobody knows', changed('lifetime="long"', 'lifetime="eternal"')],
    [
      'a label over 64 characters',
      changed('id="Pane.Label" DefaultValue="', `id="Pane.Label" DefaultValue="${'T'.repeat(65)}`),
    ],
    ['an icon size that is not offered', changed('size="80"', 'size="81"')],
  ])('does not fit with %s', (_, xml) => {
    expect(faults(xml).length).toBeGreaterThan(0);
  });
});
