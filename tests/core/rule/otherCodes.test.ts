import { describe, expect, it } from 'vitest';
import { InputError, refuse, refuseUnknown } from '../../../src/core/inputError.js';
import { boltHole, type HoleCode, type HoleFit } from '../../../src/core/rule/boltHole.js';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { edgeCodes, leastEdgeDistanceMm } from '../../../src/core/rule/edgeDistance.js';
import { withOtherCodes } from '../../../src/core/rule/otherCodes.js';
import { leastPitchMm } from '../../../src/core/rule/pitch.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';

const bolt = (name: string) => readBolt(name, 'Bolt', 'mm');
const hole = (name: string, code: HoleCode, fit: HoleFit = 'standard') =>
  refusal(() => boltHole({ bolt: bolt(name), fit, code }));
const edge = (name: string, code: (typeof edgeCodes)[number]) =>
  refusal(() => leastEdgeDistanceMm({ bolt: bolt(name), edge: 'rolled', code, fit: 'standard' }));

describe('the way out of a table that lacks a bolt', () => {
  it.each([
    ['M12', 'AISC', 'standard', /M36 and above, or give code EN or ISO 273\.$/],
    ['M12', 'AISC', 'oversize', /M36 and above, or give code EN\.$/],
    ['M6', 'AISC', 'standard', /M36 and above, or give code ISO 273\.$/],
    ['M6', 'EN', 'standard', /M64, or give code ISO 273\.$/],
    ['3/4', 'EN', 'standard', /^Write a metric size such as M20, or give code AISC\.$/],
    ['M68', 'ISO 273', 'medium', /M64, or give code AISC\.$/],
    ['3/4', 'ISO 273', 'medium', /^Write a metric size such as M20, or give code AISC\.$/],
    ['3/8', 'AISC', 'standard', /1-1\/8 and above \(in\)\.$/],
    ['M12', 'AISC', 'anchor rod', /^Write an inch size such as 3\/4\.$/],
  ] as const)('of the hole of %s by %s, %s', (name, code, fit, allowed) => {
    expect(hole(name, code, fit).allowed).toMatch(allowed);
  });

  it.each([
    ['M12', 'AISC', /M36 and above, or give code EN or AS\.$/],
    ['M6', 'AISC 360-22', /M36 and above, or give code AS\.$/],
    ['M6', 'EN', /M64, or give code AS\.$/],
    ['3/4', 'CSA', /^Write a metric size such as M20, or give code AISC, AISC 360-22 or AS\.$/],
  ] as const)('of the edge distance of %s by %s', (name, code, allowed) => {
    expect(edge(name, code).allowed).toMatch(allowed);
  });

  it('of the pitch by EN', () => {
    const pitch = (name: string) => refusal(() => leastPitchMm({ bolt: bolt(name), code: 'EN' }));
    expect(pitch('M6').allowed).toMatch(/M64, or give code AISC, AISC 360-22, CSA or AS\.$/);
  });

  it('is a setting for a cell of a row, where the code knows holes and edges', () => {
    expect(hole('M12', 'AISC').allowedInCell).toMatch(
      / and above, or set Edge code to EN on the Shop sheet\.$/,
    );
    expect(hole('3/4', 'EN').allowedInCell).toMatch(
      /such as M20, or set Edge code to AISC on the Shop sheet\.$/,
    );
    expect(edge('M12', 'AISC').allowedInCell).toMatch(/or set Edge code to EN on the Shop sheet\.$/);
    expect(edge('M6', 'AISC').allowedInCell).toMatch(/M36 and above\.$/);
  });

  it('holds: every code that is named has the bolt', () => {
    for (const name of ['M5', 'M12', 'M14', 'M18', 'M33', '3/4', '1-1/4']) {
      for (const code of edgeCodes) {
        const input = { bolt: bolt(name), edge: 'rolled', fit: 'standard' } as const;
        const named = edgeCodes.filter(
          (each) => each !== code && new RegExp(`code.*\\b${each}\\b`).test(fix(name, code)),
        );
        for (const each of named) expect(leastEdgeDistanceMm({ ...input, code: each })).toBeGreaterThan(0);
      }
    }
  });
});

/** What the edge distance by a code says to do; empty where the code has the bolt. */
function fix(name: string, code: (typeof edgeCodes)[number]): string {
  try {
    leastEdgeDistanceMm({ bolt: bolt(name), edge: 'rolled', code, fit: 'standard' });
    return '';
  } catch (error) {
    if (error instanceof InputError) return error.failure.allowed;
    throw error;
  }
}

describe('withOtherCodes', () => {
  it('passes on every other refusal and every error', () => {
    const refused = () => refuse('Fit', 'x', 'is wrong.', 'Write y.');
    expect(refusal(() => withOtherCodes('AISC', ['AISC', 'EN'], refused)).allowed).toBe('Write y.');
    const broken = () => {
      throw new TypeError('broken');
    };
    expect(() => withOtherCodes('AISC', ['AISC', 'EN'], broken)).toThrow(TypeError);
  });

  it('leaves no step of the codes that were tried', () => {
    const working = new Working();
    expect(() => boltHole({ bolt: bolt('M12'), fit: 'standard', code: 'AISC' }, working)).toThrow(InputError);
    const atEdge = { bolt: bolt('M12'), edge: 'rolled', code: 'AISC', fit: 'standard' } as const;
    expect(() => leastEdgeDistanceMm(atEdge, working)).toThrow(InputError);
    expect(working.steps).toEqual([]);
  });
});

describe('withOtherCodes: what it leaves alone', () => {
  const codes = ['AISC', 'EN', 'AS'] as const;
  type Code = (typeof codes)[number];
  /** The first code fails as it is told, the others have the bolt. */
  const failing = (fail: () => never) => (code: Code) => (code === 'AISC' ? fail() : 1);
  const lacks = () => refuseUnknown('Bolt', 'M12', 'M12 is not a size.', 'Allowed: M16, 7/8. or 1 in.');

  it('every refusal but that of a bolt which the table lacks, as it is', () => {
    for (const fail of [
      () => refuse('Bolt', '0', '0 is not above zero.', 'Write M20.'),
      () => refuseUnknown('Leg', '43', 'no leg of 43 mm.', 'Write 40.'),
    ]) {
      expect(refusal(() => withOtherCodes('AISC', codes, failing(fail)))).toEqual(refusal(fail));
    }
  });

  it('a fault of ours, of its own rule or of another', () => {
    const fault = (): never => {
      throw new RangeError('a fault of ours');
    };
    expect(() => withOtherCodes('AISC', codes, failing(fault))).toThrow(RangeError);
    const other = (code: Code) => (code === 'AISC' ? lacks() : fault());
    expect(() => withOtherCodes('AISC', codes, other)).toThrow(RangeError);
  });

  it('a point within the sentence: only the last one makes way for the codes', () => {
    const { allowed } = refusal(() => withOtherCodes('AISC', codes, failing(lacks)));
    expect(allowed).toBe('Allowed: M16, 7/8. or 1 in, or give code EN or AS.');
  });
});
