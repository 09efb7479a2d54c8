import { describe, expect, it } from 'vitest';
import { lackingWords, stopsNote, stopsWhy, stopsWord } from '../../../src/core/say/strokeWords.js';
import { strokeOperations } from '../../../src/core/stroke/strokeJob.js';
import type { StopsOfStroke } from '../../../src/core/stroke/strokeLimits.js';

const stops: StopsOfStroke = { is: 'stops', upperMm: 16, lowerMm: -2, stripperMm: 11.5, notChecked: [] };

describe('what is said of the stops of a stroke', () => {
  it.each(strokeOperations)('of the %s ends in the caution that it is no guard', (operation) => {
    expect(stopsNote(stops, operation, 'Bay A', 'mm')).toMatch(
      /A short stroke saves time; it is never a guard\.$/,
    );
  });

  it('of a punch says how they are set, the stripper, the travel and what was not checked', () => {
    const more: StopsOfStroke = {
      ...stops,
      travel: { upperMm: 24, lowerMm: 42 },
      notChecked: ['punchStroke', 'punchOpenHeight'],
    };
    expect(stopsNote(more, 'punch', 'Bay A', 'mm')).toBe(
      'Jog with this punch, then set; check again after grinding. Stripper level, 11.5 mm over the die. ' +
        'The ram travels 24 mm down to the upper stop and 42 mm to the lower. ' +
        'Punch stroke and Punch open height of Bay A are not given, so they were not checked. ' +
        'A short stroke saves time; it is never a guard.',
    );
    expect(stopsNote({ ...stops, notChecked: ['punchStroke'] }, 'punch', 'Bay A', 'mm')).toContain(
      'Punch stroke of Bay A is not given, so it was not checked.',
    );
  });

  it('names what is lacking', () => {
    expect(lackingWords(['returnSpeed'], 'Bay A')).toBe('Return speed of Bay A is not given');
    expect(lackingWords(['pressSpeed', 'returnSpeed'], 'Bay A')).toBe(
      'Press speed and Return speed of Bay A are not given',
    );
  });

  it('where there are none is a word and a reason', () => {
    const out = { is: 'out of travel', why: 'ends above the stop', givenMm: 72, limitMm: 60 } as const;
    expect(stopsWord(out)).toBe('Too big');
    expect(stopsWhy(out, 'Bay A', 'mm')).toBe(
      'The punch of Bay A must travel 72 mm to go into the die; its stroke is 60 mm. Use a longer punch.',
    );
    expect(stopsWord({ is: 'test piece' })).toBe('test piece');
  });
});
