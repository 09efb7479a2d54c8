import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import addFormats from 'ajv-formats';
import Ajv from 'ajv-draft-04';
import { describe, expect, it } from 'vitest';
import { catalog, namespace } from '../../src/functions/catalog.js';
import { type BuiltMetadata, metadata } from './support/built.js';

const longestDescription = 128;
const schemaVersion = '1.30';

/**
 * A unified manifest with the functions in it, made for checking only: this platform's schema is the one
 * published description of the metadata. What it does not know of the metadata file is left out.
 */
function unifiedManifest(given: Pick<BuiltMetadata, 'functions' | 'enums'>) {
  const functions = given.functions.map(({ result, options, ...rest }) => ({
    ...rest,
    ...options,
    result: { dimensionality: result?.dimensionality },
  }));
  return {
    manifestVersion: schemaVersion,
    version: '1.0.0',
    id: '5b0d7c1e-3a52-4c7e-9f5d-6a1d0e8f2b47',
    developer: {
      name: 'Tonrow',
      websiteUrl: 'https://localhost/',
      privacyUrl: 'https://localhost/privacy',
      termsOfUseUrl: 'https://localhost/terms',
    },
    name: { short: 'Tonrow', full: 'Tonrow' },
    description: { short: 'Press checks', full: 'Press checks, row by row' },
    icons: { color: 'color.png', outline: 'outline.png' },
    accentColor: '#FFFFFF',
    extensions: [
      {
        requirements: { scopes: ['workbook'] },
        runtimes: [
          {
            id: 'FunctionsRuntime',
            type: 'general',
            lifetime: 'long',
            code: { page: 'https://localhost/functions.html', script: 'https://localhost/functions.js' },
            customFunctions: {
              namespace: { id: namespace, name: namespace },
              allowCustomDataForDataTypeAny: false,
              functions,
              enums: given.enums,
            },
          },
        ],
      },
    ],
  };
}

const require = createRequire(import.meta.url);
const packageFolder = require.resolve('@microsoft/app-manifest/package.json');
const schemaFile = new URL(
  `build/json-schemas/teams/v${schemaVersion}/MicrosoftTeams.schema.json`,
  `file://${packageFolder}`,
);
// The schema's patterns hold two escapes that regular expressions have not.
const schema = JSON.parse(
  readFileSync(schemaFile, 'utf8').replaceAll('\\a', '\\u0007').replaceAll('\\v', '\\u000b'),
) as Record<string, unknown>;
const ajv = new Ajv({ strict: false, allErrors: true });
addFormats(ajv);
const check = ajv.compile(schema);

/** What the schema finds wrong; nothing where the metadata fit. */
function validate(given: Pick<BuiltMetadata, 'functions' | 'enums'>): string[] {
  check(unifiedManifest(given));
  return (check.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

describe('functions.json', () => {
  it('fits the published schema of custom functions', () => {
    expect(validate(metadata)).toEqual([]);
  });

  it.each([
    ['a name with a hyphen', { functions: [{ id: 'A-B', name: 'A-B', parameters: [] }], enums: [] }],
    [
      'an unknown dimensionality',
      {
        functions: [{ id: 'ABC', name: 'ABC', parameters: [{ name: 'a', dimensionality: 'cube' }] }],
        enums: [],
      },
    ],
    [
      'an enumeration without values',
      {
        functions: [{ id: 'ABC', name: 'ABC', parameters: [] }],
        enums: [{ id: 'ABC', type: 'string' }],
      },
    ],
  ])('would not fit with %s', (_, given) => {
    expect(validate(given as never).length).toBeGreaterThan(0);
  });

  it('lists every function of the catalog once, by a name that formulas can hold', () => {
    const names = metadata.functions.map(({ name }) => name);
    expect(names).toEqual(catalog.map(({ name }) => name));
    expect(new Set(names).size).toBe(names.length);
    for (const { id, name } of metadata.functions) {
      expect(id).toBe(name);
      expect(name).toMatch(/^[A-Z][A-Z0-9]{2,31}$/);
    }
  });

  it('describes every function and parameter in the length the host shows', () => {
    for (const { description, parameters } of metadata.functions) {
      for (const text of [description, ...parameters.map((each) => each.description)]) {
        expect(text?.length).toBeGreaterThan(5);
        expect(text?.length).toBeLessThanOrEqual(longestDescription);
      }
      const names = parameters.map(({ name }) => name.toLowerCase());
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('takes anything as a value and lets errors through, so that text such as 3/8 and error cells arrive', () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    for (const { parameters } of metadata.functions) {
      for (const { type, customEnumId } of parameters) expect(type).toBe(customEnumId ? 'string' : 'any');
    }
  });

  it('has optional parameters only behind the required ones', () => {
    for (const { name, parameters } of metadata.functions) {
      const optional = parameters.map((each) => each.optional === true);
      expect(optional, name).toEqual([...optional].sort());
    }
  });

  it('has the enumerations its parameters name, and no other, each choice with its meaning', () => {
    const named = metadata.functions.flatMap(({ parameters }) =>
      parameters.flatMap(({ customEnumId }) => customEnumId ?? []),
    );
    expect(metadata.enums.map(({ id }) => id).sort()).toEqual([...new Set(named)].sort());
    for (const { type, values } of metadata.enums) {
      expect(type).toBe('string');
      expect(values.length).toBeGreaterThan(1);
      // The host shows the name and puts the string into the formula.
      for (const { name, stringValue, tooltip } of values) {
        expect(stringValue).toBe(name);
        expect(tooltip.length).toBeGreaterThan(5);
      }
    }
  });
});
