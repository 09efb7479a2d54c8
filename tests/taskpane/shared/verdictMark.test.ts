import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { type Verdict, verdictKind, verdicts } from '../../../src/core/check/verdict.js';
import { VerdictMark, VerdictWord } from '../../../src/taskpane/shared/VerdictMark.js';

const mark = (verdict: Verdict) => renderToStaticMarkup(createElement(VerdictMark, { verdict }));

describe('the mark of a verdict', () => {
  it('has a shape of its own for each kind, without a color of its own', () => {
    const shapes = new Map<string, Verdict[]>();
    for (const verdict of verdicts)
      shapes.set(mark(verdict), [...(shapes.get(mark(verdict)) ?? []), verdict]);
    expect([...shapes.values()]).toEqual([
      ['Check input', 'No part', 'Not checked'],
      verdicts.filter((verdict) => verdictKind(verdict) === 'fails'),
      ['OK so far'],
      ['Near limit'],
      ['Off press'],
      ['OK'],
    ]);
    for (const shape of shapes.keys()) expect(shape).not.toMatch(/#[\da-f]{3}|rgb/i);
  });

  it('stays in its square', () => {
    const dots = [...mark('OK so far').matchAll(/cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)];
    expect(dots.length).toBeGreaterThan(3);
    for (const [, x, y, r] of dots)
      for (const at of [Number(x), Number(y)]) {
        expect(at - Number(r)).toBeGreaterThanOrEqual(0);
        expect(at + Number(r)).toBeLessThanOrEqual(14);
      }
  });

  it('stands beside the word, and says nothing of its own', () => {
    const word = renderToStaticMarkup(createElement(VerdictWord, { verdict: 'Off press' }));
    expect(word).toContain('Off press</span>');
    expect(word).toContain('aria-hidden="true"');
  });
});
