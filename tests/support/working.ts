import { expect } from 'vitest';
import { type Step, Working } from '../../src/core/working/working.js';

/**
 * Runs a calculation with and without its working: both give the same number to the last bit, the last step shows
 * it, and every step has a title, a formula and a source. Returns the steps.
 */
export function expectWorking(calculate: (working?: Working) => number): Step[] {
  const working = new Working();
  const shown = calculate(working);
  expect(calculate()).toBe(shown);
  expect(working.steps.at(-1)?.result.value).toBe(shown);
  for (const step of working.steps) {
    expect(step.title).not.toBe('');
    expect(step.formula).not.toBe('');
    expect(step.source).not.toBe('');
    for (const value of [...step.values, step.result]) expect(value.value).not.toBeNaN();
  }
  return working.steps;
}
