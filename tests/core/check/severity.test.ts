import { describe, expect, it } from 'vitest';
import { bySeverity, hardestOf, mildestOf, worstVerdict } from '../../../src/core/check/severity.js';
import { blank, share, throat, unreadable } from '../../support/pressFindings.js';

describe('bySeverity', () => {
  it('puts the worse word first, and among equals the larger share', () => {
    const [low, high, far] = [share('OK', 0.2), share('OK', 0.5), throat("Can't reach")];
    expect([low, high, far, unreadable].sort(bySeverity)).toEqual([unreadable, far, high, low]);
  });
});

describe('hardestOf', () => {
  it('is the largest share, whatever the words; none without a share', () => {
    expect(hardestOf([share('OK', 0.2), throat('Too big'), share('OK', 0.5)])?.use).toBe(0.5);
    expect(hardestOf([throat('Too big'), blank])).toBeUndefined();
  });
});

describe('worstVerdict', () => {
  it('is OK where nothing is found', () => {
    expect(worstVerdict([])).toBe('OK');
    expect(worstVerdict([share('Near limit', 0.9), blank])).toBe('Not checked');
  });
});

describe('mildestOf', () => {
  it('is the list whose worst word is the mildest, the first of equals', () => {
    const [big, far] = [[share('OK', 0.1), throat('Too big')], [throat("Can't reach")]];
    expect(mildestOf([big, far])).toBe(far);
    expect(mildestOf([far, [throat("Can't reach"), blank]])).toBe(far);
    expect(mildestOf([far, []])).toEqual([]);
    expect(mildestOf([])).toBeUndefined();
  });
});
