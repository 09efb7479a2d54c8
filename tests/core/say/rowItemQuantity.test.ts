import { expect, it } from 'vitest';
import { rowItemQuantity } from '../../../src/core/say/rowItemQuantity.js';
import type { CheckedRow } from '../../../src/core/row/rowResult.js';

const row: CheckedRow = { blank: false, verdict: 'OK', route: [], findings: [], readings: [] };

it('the press chosen is the one the result stands for, and nothing where none could be tried', () => {
  expect(rowItemQuantity({ ...row, press: 'Bay B' }, 'press', 'in')).toEqual({
    kind: 'text',
    value: 'Bay B',
  });
  expect(rowItemQuantity(row, 'press', 'in')).toEqual({ kind: 'text', value: '' });
  expect(rowItemQuantity({ blank: true }, 'press', 'in')).toEqual({ kind: 'text', value: '' });
});
