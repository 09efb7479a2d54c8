// The counted limits that DEVELOPERS.md lists are those of the code.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';

const page = readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8');
const section = page.split('\n## ').find((text) => text.startsWith('Counted limits')) ?? '';
const rows = section
  .split('\n')
  .filter((line) => line.startsWith('| ') && line.includes('`'))
  .map((line) => {
    const [, what = '', amount = '', where = ''] = line.split('|').map((cell) => cell.trim());
    const [, name = '', file = ''] = /^`(\w+)` in `([\w/.]+)`$/.exec(where) ?? [];
    return { what, amount: /^[\d,]+/.exec(amount)?.[0] ?? '', name, file };
  });

/** The number that a source gives a name, MiB left out. */
function numberOf(file: string, name: string): number {
  const source = readFileSync(path.join(root, 'src', file), 'utf8');
  const [, digits = ''] = new RegExp(`\\b${name}(?: =|:) ([\\d_.e]+)(?: \\* MiB)?[;,]`).exec(source) ?? [];
  return digits === '' ? NaN : Number(digits.replaceAll('_', ''));
}

describe('the table of limits', () => {
  it('has every line in its form', () => {
    expect(rows.length).toBeGreaterThan(40);
    expect(section.match(/^\|/gm)).toHaveLength(rows.length + 2);
  });

  it.each(rows)('$what: $amount', ({ amount, name, file }) => {
    expect(numberOf(file, name)).toBe(Number(amount.replaceAll(',', '')));
  });
});
