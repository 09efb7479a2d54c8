import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeFields } from '../../../../src/taskpane/shop/press/mergeFields.js';

const base = { force: 60, throat: 12, stroke: null };

describe('merging two edits of the same fields', () => {
  it.each([
    ['nobody changed anything', {}, {}, {}, [], []],
    ['only I changed a field', { throat: 14 }, {}, { throat: 14 }, [], []],
    ['only they changed a field', {}, { throat: 10 }, { throat: 10 }, ['throat'], []],
    [
      'both changed different fields',
      { throat: 14 },
      { force: 66 },
      { throat: 14, force: 66 },
      ['force'],
      [],
    ],
    ['both changed a field to the same', { throat: 14 }, { throat: 14 }, { throat: 14 }, [], []],
    ['both changed a field differently', { throat: 14 }, { throat: 10 }, { throat: 14 }, [], ['throat']],
    ['they cleared what I left', {}, { throat: null }, { throat: null }, ['throat'], []],
    ['they cleared what I changed', { throat: 14 }, { throat: null }, { throat: 14 }, [], ['throat']],
    ['they added a field', {}, { rake: 4 }, { rake: 4 }, ['rake'], []],
    ['a number against the same as text', { throat: '12' }, { throat: 13 }, { throat: '12' }, [], ['throat']],
  ])('%s', (_, my, their, change, taken, conflicting) => {
    const merge = mergeFields(base, { ...base, ...my }, { ...base, ...their });
    expect(merge.merged).toEqual({ ...base, ...change });
    expect(merge.taken).toEqual(taken);
    expect(merge.conflicts.map(({ field }) => field)).toEqual(conflicting);
  });

  it('shows all three values of a conflict', () => {
    const merge = mergeFields(base, { ...base, throat: 14 }, { ...base, throat: 10 });
    expect(merge.conflicts).toEqual([{ field: 'throat', base: 12, mine: 14, theirs: 10 }]);
  });

  it('takes a row they deleted as cleared', () => {
    expect(mergeFields(base, base, { force: 60, stroke: null })).toMatchObject({
      merged: { throat: null },
      taken: ['throat'],
    });
  });

  it('keeps fields with the names of built-in properties apart from those', () => {
    const merge = mergeFields({}, {}, { constructor: 1, toString: 2 });
    expect(Object.entries(merge.merged)).toEqual([
      ['constructor', 1],
      ['toString', 2],
    ]);
  });

  it('never loses a change: every merged field is mine or theirs, and theirs only where I left it', () => {
    const fields = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.constantFrom(null, 1, 2, 'x'));
    fc.assert(
      fc.property(fields, fields, fields, (before, mine, theirs) => {
        const { merged, conflicts } = mergeFields(before, mine, theirs);
        for (const [field, value] of Object.entries(merged)) {
          const [was, my, their] = [before, mine, theirs].map((each) => each[field] ?? null);
          const conflicting = conflicts.some((each) => each.field === field);
          expect(value).toBe(my === was ? their : my);
          expect(conflicting).toBe(my !== was && their !== was && my !== their);
        }
      }),
    );
  });
});
