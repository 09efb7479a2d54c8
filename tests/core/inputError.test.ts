import { describe, expect, it } from 'vitest';
import { ifRead, InputError, refuse, sentenceInCell } from '../../src/core/inputError.js';

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

describe('a reading that may refuse', () => {
  it('gives what was read, or nothing where it was refused; any other error goes on', () => {
    expect(ifRead(() => 3)).toBe(3);
    expect(ifRead(() => refuse('Hole', 'x', 'is wrong.', 'Write 1.'))).toBeUndefined();
    const fault = () => {
      throw new TypeError('a fault of ours');
    };
    expect(() => ifRead(fault)).toThrow('a fault of ours');
  });
});
