import { describe, expect, it } from 'vitest';
import { readFinishedHole } from '../../../../src/core/row/read/readFinishedHole.js';
import { readHole } from '../../../../src/core/tooling/readHole.js';
import { refusalText } from '../../../support/refusal.js';

const read = (text: string) => readFinishedHole(text, 'Hole', 'in');

describe('a hole with work on it', () => {
  it.each([
    '13/16 CSK',
    "13/16 C'SK",
    '13/16 C/SK',
    '13/16 CSINK',
    "13/16 C'SUNK",
    'CSK 13/16',
    '13/16 countersunk',
    '13/16, CSK',
    '13/16 & CSK.',
    'csk Ø13/16',
  ])('%s is countersunk', (text) => {
    expect(read(text)).toEqual({ ...readHole('13/16', 'Hole', 'in'), finishing: ['countersink'] });
  });

  it('keeps its count', () => {
    for (const text of ['2 @ 13/16 CSK', '(2) 13/16 CSK', '13/16 CSK (2)'])
      expect(read(text)).toEqual({ ...readHole('2 @ 13/16', 'Hole', 'in'), finishing: ['countersink'] });
  });

  it('is tapped where its mark tells that the size is the hole’s', () => {
    for (const text of ['Ø27/64 tapped', 'tap Ø27/64', 'tapped 27/64 dia', '27/64 hole tapped'])
      expect(read(text)).toEqual({ ...readHole('27/64', 'Hole', 'in'), finishing: ['tap'] });
    expect(read('Ø27/64 CSK & tapped').finishing).toEqual(['countersink', 'tap']);
  });

  it('is refused with both readings where its size may be the thread’s', () => {
    for (const text of ['tapped 7/16', '7/16 TAP', '7/16 drill & tap', 'drill & tap 7/16'])
      expect(refusalText(() => read(text))).toBe(
        `Hole: '${text}' may be a thread of 7/16 or a hole of 7/16 that is tapped. Write the hole before it is tapped, with its mark: Ø27/64 tapped.`,
      );
    expect(refusalText(() => readFinishedHole('10.2 tapped', 'Hole', 'mm'))).toContain('Ø10.2 tapped');
  });

  it.each(['1/2-13 UNC TAP', 'tap 1/2-13', 'M12 tapped', 'M12x1.75 tapped', '3/8 UNC tap'])(
    '%s is a thread, not a size',
    (text) => {
      expect(refusalText(() => read(text))).toContain('is a thread, not the size of a hole.');
    },
  );

  it('without a size is refused', () => {
    for (const text of ['csk', 'TAP', 'csk & tap'])
      expect(refusalText(() => read(text))).toBe(
        `Hole: '${text}' has no size. Write the size of the hole with it.`,
      );
  });

  it.each([
    '1CSK 13/16',
    'CSK1 3/16',
    '13/16 csk 82°',
    '13/16 csk 1-1/2',
    '13/16 cbore',
    'task 13/16',
    '13/16 tape',
    '13/16 csk far side',
  ])('%s is refused', (text) => {
    expect(refusalText(() => read(text))).toMatch(/^Hole: .+\. .+\.$/);
  });
});
