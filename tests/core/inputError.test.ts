import { describe, expect, it } from 'vitest';
import { InputError, sentenceInCell } from '../../src/core/inputError.js';

const failure = { code: 'invalid', argument: 'Hole', received: 'x', problem: 'is wrong.' } as const;

describe('InputError', () => {
  it('says the same to a call and to a cell, where one way out holds for both', () => {
    const error = new InputError({ ...failure, allowed: 'Write 1.' });
    expect([error.message, error.messageInCell]).toEqual([
      'Hole: is wrong. Write 1.',
      'Hole: is wrong. Write 1.',
    ]);
  });

  it('says to a cell what a cell can do', () => {
    const error = new InputError({
      ...failure,
      allowed: 'Give the shop cell.',
      allowedInCell: 'Write 1 in.',
    });
    expect(error.message).toBe('Hole: is wrong. Give the shop cell.');
    expect(error.messageInCell).toBe('Hole: is wrong. Write 1 in.');
    expect(sentenceInCell(error.failure)).toBe(error.messageInCell);
  });
});
