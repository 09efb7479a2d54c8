import { describe, expect, it } from 'vitest';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { edgeCodes } from '../../../src/core/rule/edgeDistance.js';
import { leastPitchMm } from '../../../src/core/rule/pitch.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const bolt = (size: string) => readBolt(size, 'Bolt', 'mm');

describe('leastPitchMm: arguments', () => {
  it('refuses a diameter that is not above zero', () => {
    for (const code of edgeCodes) {
      const none = { diameterMm: 0, system: 'mm', name: 'M0' } as const;
      expect(refusal(() => leastPitchMm({ bolt: none, code })).argument).toBe('Bolt');
    }
  });
});

describe('leastPitchMm: limits', () => {
  it('under EN has the sizes of the hole table, from M8 to M64', () => {
    expect(leastPitchMm({ bolt: bolt('M12'), code: 'EN' })).toBeCloseTo(28.6, 9);
    expect(leastPitchMm({ bolt: bolt('M36'), code: 'EN' })).toBeCloseTo(85.8, 9);
    for (const size of ['M6', 'M68', '3/4']) {
      expect(refusal(() => leastPitchMm({ bolt: bolt(size), code: 'EN' })).code).toBe('unknown');
    }
  });
});

describe('leastPitchMm: values', () => {
  it.each([
    ['AISC', 64],
    ['AISC 360-22', 64],
    ['EN', 57.2],
    ['CSA', 64.8],
    ['AS', 60],
  ] as const)('of M24 under %s is %d mm', (code, pitchMm) => {
    expect(leastPitchMm({ bolt: bolt('M24'), code })).toBeCloseTo(pitchMm, 9);
  });

  it.each(edgeCodes)('shows its working under %s', (code) => {
    expectWorking((working) => leastPitchMm({ bolt: bolt('M24'), code }, working));
  });

  it('AISC says what is preferred, the others have no such word', () => {
    for (const code of edgeCodes) {
      const steps = expectWorking((working) => leastPitchMm({ bolt: bolt('M24'), code }, working));
      expect(steps.at(-1)?.cautions).toEqual(code.startsWith('AISC') ? ['3 d is preferred.'] : undefined);
    }
  });

  it('shows no step of another code where its own refuses', () => {
    const working = new Working();
    refusal(() => leastPitchMm({ bolt: bolt('3/4'), code: 'EN' }, working));
    expect(working.steps).toEqual([]);
  });
});
