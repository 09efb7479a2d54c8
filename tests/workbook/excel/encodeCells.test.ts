import { describe, expect, it } from 'vitest';
import type { Content } from '../../../src/workbook/content.js';
import { encodeCells } from '../../../src/workbook/excel/encodeCells.js';

const formula = { formula: '=A1' };

describe('what is handed to the host for a cell', () => {
  it.each<[string, Content | undefined, string | undefined, string, string | null, unknown, string | null]>([
    ['text, with an apostrophe', 'Bay A', undefined, 'General', null, "'Bay A", null],
    ['text in a text cell, as it is', '=1', undefined, '@', null, '=1', null],
    ['text made a text cell, after that', '=1', '@', 'General', '@', '=1', '@'],
    ['text taken out of a text cell, with an apostrophe', '=1', 'General', '@', 'General', "'=1", 'General'],
    ['a number, as it is', 5, undefined, '0.00', null, 5, null],
    ['a number in a text cell, while that is none', 5, undefined, '@', 'General', 5, '@'],
    ['a formula in a text cell, while that is none', formula, undefined, '@', 'General', '=A1', '@'],
    ['a formula made a text cell, before that', formula, '@', 'General', 'General', '=A1', '@'],
    ['an error constant, as its code', { error: '#N/A' }, undefined, 'General', null, '#N/A', null],
    ['a truth value', true, undefined, 'General', null, true, null],
    ['a blank', null, undefined, 'General', null, '', null],
    ['empty text, as a blank', '', undefined, 'General', null, '', null],
    ['a format alone', undefined, '@', 'General', null, null, '@'],
  ])('%s', (_, content, format, held, before, sent, after) => {
    const encoded = encodeCells([[content]], [[format]], [[held]]);
    expect(encoded).toEqual({
      formatsBefore: before === null ? undefined : [[before]],
      contents: sent === null ? undefined : [[sent]],
      formatsAfter: after === null ? undefined : [[after]],
    });
  });

  it('leaves cells alone that are not given, among others', () => {
    const encoded = encodeCells([[undefined, 5]], [[undefined, undefined]], [['@', '@']]);
    expect(encoded).toEqual({
      formatsBefore: [[null, 'General']],
      contents: [[null, 5]],
      formatsAfter: [[null, '@']],
    });
  });
});
