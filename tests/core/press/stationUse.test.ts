import { describe, expect, it } from 'vitest';
import { stationUse } from '../../../src/core/press/stationUse.js';
import { blank, share, throat, unreadable } from '../../support/pressFindings.js';
import { refusal } from '../../support/refusal.js';

describe('stationUse', () => {
  it('is the largest share where nothing stops the work', () => {
    expect(stationUse([share('OK', 0.2), share('Near limit', 0.9)])).toBe(0.9);
    expect(stationUse([share('Over capacity', 1.4), share('OK', 0.3)])).toBe(1.4);
    expect(stationUse([throat('OK'), share('OK', 0)])).toBe(0);
  });

  it('is the word of what stops it, the worst of several', () => {
    expect(stationUse([blank, share('OK', 0.2), throat('OK')])).toBe('Not checked');
    expect(stationUse([share('OK', 0.2), blank, throat('Too big')])).toBe('Too big');
  });

  it('is Off press where no station makes the work', () => {
    expect(stationUse([])).toBe('Off press');
  });

  it('refuses with the reason where a cell of the press cannot be read', () => {
    const failure = refusal(() => stationUse([share('OK', 0.2), unreadable]));
    const problem = "Throat: 'x' is no length. Write 12.";
    expect(failure).toMatchObject({ code: 'invalid', argument: 'Press', problem });
  });
});
