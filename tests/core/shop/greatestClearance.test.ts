import { describe, expect, it } from 'vitest';
import { jobSpecs } from '../../../src/core/rule/jobSpec.js';
import { greatestClearance } from '../../../src/core/shop/greatestClearance.js';
import { settingTable, shopWith } from '../../support/sampleShop.js';

const of = (settings: Record<string, string>) =>
  greatestClearance(shopWith({}, { settings: settingTable(settings) }));

describe('greatestClearance', () => {
  it('is 1 mm for work to EN 1090-2, whatever the edge code, and is not set by any other', () => {
    for (const spec of jobSpecs) {
      const greatest = spec.startsWith('EN 1090-2') ? { greatestMm: 1 } : {};
      for (const code of ['AISC', 'EN'])
        expect(of({ 'Job spec': spec, 'Edge code': code })).toEqual(greatest);
    }
    expect(greatestClearance(undefined)).toEqual({});
  });
});
