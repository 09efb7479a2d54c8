import { describe, expect, it } from 'vitest';
import { splitArguments } from '../../../src/sheet/formula/splitArguments.js';

describe('splitArguments', () => {
  it.each([
    ['', []],
    ['A1, B2', ['A1', 'B2']],
    [',,A1', ['', '', 'A1']],
    ['"a,b",{1,2;3,4}', ['"a,b"', '{1,2;3,4}']],
    ["'My, sheet'!A1,Parts[[#Headers],[it''s]]", ["'My, sheet'!A1", "Parts[[#Headers],[it''s]]"]],
    ['SUM(A1,B1),2', ['SUM(A1,B1)', '2']],
  ])('parts %j at the commas of the call itself', (text, parts) => {
    expect(splitArguments(text)).toEqual(parts);
  });

  it('is undefined where a bracket closes that was not opened', () => {
    expect(splitArguments('A1),B1')).toBeUndefined();
  });
});
