import { describe, expect, it } from 'vitest';
import { pageWords } from '../../../src/bench/page/gridTexts.js';

describe('what the grid says', () => {
  it('of a window that is too small is not said', () => {
    expect(
      pageWords(
        'The current window is too small to display this sheet properly. Consider resizing your browser window or adjusting frozen rows and columns.',
      ),
    ).toBeUndefined();
  });

  it('of a failure does not lead to somebody else', () => {
    expect(pageWords('An unexpected error occurred. Submit a support ticket at odoo.com/help.')).toBe(
      'The formula could not be calculated on this page.',
    );
  });

  it('of merged cells says what to do', () => {
    for (const text of [
      'This operation is not possible due to a merge. Please remove the merges first than try again.',
      'Merged cells are preventing this operation. Unmerge those cells and try again.',
    ])
      expect(pageWords(text)).toBe('Merged cells are in the way: unmerge them, then try again.');
  });

  it('otherwise is said as it is, also where it is no plain text yet', () => {
    expect(pageWords({ toString: () => 'You cannot create overlapping tables.' })).toBe(
      'You cannot create overlapping tables.',
    );
  });
});
