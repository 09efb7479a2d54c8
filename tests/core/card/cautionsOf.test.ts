import { describe, expect, it } from 'vitest';
import { cautionsOf } from '../../../src/core/card/cautionsOf.js';
import { cautionWords } from '../../../src/core/say/cautionWords.js';

describe('the cautions of steps', () => {
  it('are those of what is done, each once', () => {
    expect(cautionsOf([{ action: 'run', station: 'punch', notes: [] }])).toEqual([
      'guards',
      'existing hole',
      'stripper',
    ]);
    expect(
      cautionsOf([
        { action: 'lock out', notes: [] },
        { action: 'tools', station: 'flat shear', notes: [] },
        { action: 'back gauge', station: 'flat shear', notes: [{ is: 'touching starts the stroke' }] },
      ]),
    ).toEqual(['guards', 'lock out', 'touching starts']);
  });

  it('are none where nothing is done on a press', () => {
    expect(cautionsOf([])).toEqual([]);
    expect(cautionsOf([{ action: 'elsewhere', notes: [{ is: 'next', route: 'saw' }] }])).toEqual([]);
  });

  it('are whole sentences', () => {
    for (const each of ['guards', 'lock out', 'existing hole', 'stripper', 'touching starts'] as const)
      expect(cautionWords(each)).toMatch(/^[A-Z].*\.$/);
  });
});
