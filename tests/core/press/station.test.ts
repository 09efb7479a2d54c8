import { describe, expect, it } from 'vitest';
import { bySeverity } from '../../../src/core/check/severity.js';
import type { Finding } from '../../../src/core/check/finding.js';
import { verdicts } from '../../../src/core/check/verdict.js';
import { stationUse } from '../../../src/core/press/stationUse.js';
import { refusal } from '../../support/refusal.js';

const finding = (verdict: Finding['verdict'], use?: number): Finding => ({
  verdict,
  governs: 'x',
  note: 'A sentence.',
  ...(use === undefined ? {} : { use }),
});

describe('bySeverity', () => {
  it('puts the worse word first, and among equals the larger share', () => {
    const mixed = [finding('OK', 0.2), finding('OK', 0.5), finding('Edge short'), finding('Check input')];
    const sorted = [...mixed].sort(bySeverity);
    expect(sorted.map(({ verdict, use }) => [verdict, use])).toEqual([
      ['Check input', undefined],
      ['Edge short', undefined],
      ['OK', 0.5],
      ['OK', 0.2],
    ]);
  });

  it('has different words, the worst first and OK last', () => {
    expect(new Set(verdicts).size).toBe(verdicts.length);
    expect([verdicts[0], verdicts.at(-1)]).toEqual(['Check input', 'OK']);
  });
});

describe('stationUse', () => {
  it('is the largest share where nothing stops the work', () => {
    expect(stationUse([finding('OK', 0.2), finding('Near limit', 0.9)])).toBe(0.9);
    expect(stationUse([finding('Over capacity', 1.4), finding('OK', 0.3)])).toBe(1.4);
  });

  it('is the word of what stops it, the worst of several', () => {
    expect(stationUse([finding('Not checked'), finding('OK', 0.2)])).toBe('Not checked');
    expect(stationUse([finding('OK', 0.2), finding('Not checked'), finding('Too big')])).toBe('Too big');
    expect(stationUse([])).toBe('Not checked');
  });

  it('refuses with the reason where a cell of the press cannot be read', () => {
    const failure = refusal(() => stationUse([finding('OK', 0.2), finding('Check input')]));
    expect(failure).toMatchObject({ code: 'invalid', argument: 'Press', problem: 'A sentence.' });
  });
});
