import fc from 'fast-check';
import type { ToolSet } from '../../../../src/core/setup/toolOrder/changes.js';

/** A crib in which each punch has its holder, as sets of a punch and a die. */
const crib = fc
  .record({
    holders: fc.integer({ min: 1, max: 3 }),
    punches: fc.integer({ min: 1, max: 5 }),
    dies: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ holders, punches, dies }): ToolSet[] =>
    Array.from({ length: punches * dies }, (_, at) => {
      const punch = at % punches;
      return { holder: `H${punch % holders}`, punch: `P${punch}`, die: `D${Math.floor(at / punches)}` };
    }),
  );

/** Marks out of such a crib, each with up to so many sets; some with none. */
export function marksOf(most: { marks: number; sets: number }, least = 0): fc.Arbitrary<ToolSet[][]> {
  return crib.chain((sets) =>
    fc.array(fc.uniqueArray(fc.constantFrom(...sets), { maxLength: most.sets }), {
      minLength: least,
      maxLength: most.marks,
    }),
  );
}

/** The same marks at every call, evenly spread over the crib, as a long job has them. */
export function longJob(count: number, setsOfMark: number, punches: number): ToolSet[][] {
  let state = 7;
  const next = (below: number) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return Math.floor((state / 2_147_483_648) * below);
  };
  return Array.from({ length: count }, () => {
    const numbers = new Set(Array.from({ length: 1 + next(setsOfMark) }, () => next(punches)));
    return [...numbers].map((punch) => ({
      holder: `H${punch % 4}`,
      punch: `P${punch}`,
      die: `D${punch}.${punch % 2}`,
    }));
  });
}
