import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalog } from '../../../src/functions/catalog.js';

const folder = import.meta.dirname;
const checks = readdirSync(folder)
  .filter((file) => file.endsWith('.test.ts'))
  .map((file) => readFileSync(path.join(folder, file), 'utf8'))
  .join('\n');

describe('Checks against truth from outside', () => {
  it.each(catalog.map(({ name }) => name))(
    '%s has them, through the function as a sheet calls it',
    (name) => {
      expect(checks).toMatch(new RegExp(`^describe\\('${name}'`, 'm'));
    },
  );
});
