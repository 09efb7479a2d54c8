import { describe, expect, it } from 'vitest';
import { rowCost } from '../../../src/core/work/rowCost.js';

const basis = {
  seconds: 1800,
  massKg: 20,
  ratePerHour: 90,
  people: 1,
  materialPricePerKg: 1.5,
  scrapAllowance: 0,
  markup: undefined,
  margin: undefined,
};

describe('rowCost', () => {
  it('is the press and the steel', () => {
    expect(rowCost(basis)).toEqual({ press: 45, material: 30, cost: 75 });
  });

  it('pays the rate for each of the crew where it is for one of them', () => {
    expect(rowCost({ ...basis, people: 2 }).press).toBe(90);
  });

  it('buys the scrap, too', () => {
    expect(rowCost({ ...basis, scrapAllowance: 0.1 }).material).toBeCloseTo(33, 12);
  });

  it('has no material where its price is not known, and no price without markup or margin', () => {
    expect(rowCost({ ...basis, materialPricePerKg: undefined })).toEqual({ press: 45, cost: 45 });
  });

  it('tells markup, a share of the cost, from margin, a share of the price', () => {
    expect(rowCost({ ...basis, markup: 0.25 }).price).toBeCloseTo(93.75, 12);
    expect(rowCost({ ...basis, margin: 0.25 }).price).toBeCloseTo(100, 12);
  });
});
