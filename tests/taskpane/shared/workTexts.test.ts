// Times and amounts as people read them: thousands apart, money with two places.
import { describe, expect, it } from 'vitest';
import { costText, minutesText } from '../../../src/taskpane/shared/workTexts.js';

describe('a time and an amount', () => {
  it('have their thousands apart', () => {
    expect(minutesText(1395.5 * 60)).toBe('1,395.5');
    expect(minutesText(12 * 60)).toBe('12');
    expect(costText(1112.5)).toBe('1,112.50');
    expect(costText(0.005)).toBe('0.01');
  });

  it('are not known where nothing says them', () => {
    expect([minutesText(undefined), costText(undefined)]).toEqual(['not known', 'not known']);
  });
});
