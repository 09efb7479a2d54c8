import { describe, expect, it } from 'vitest';
import { isBlank, plainText, quoted } from '../../../src/core/quantity/cellValue.js';
import { visibleText } from '../../../src/core/quantity/visibleText.js';
import { processorMs } from '../../support/processorMs.js';

describe('visibleText', () => {
  it.each([
    ['\u200BA36', 'A36'],
    ['\uFEFFHole', 'Hole'],
    ['\u202A3/8\u202C', '3/8'],
    ['Sec\u00ADtion', 'Section'],
    ['\u200B\u200B', ''],
    ['PL 3/8', 'PL 3/8'],
  ])('gives %j as %j', (text, visible) => expect(visibleText(text)).toBe(visible));

  it('keeps what stands between two digits, for a dash may be lost there', () => {
    expect(visibleText('1\u200B3/16')).toBe('1\u200B3/16');
    expect(visibleText('\u200B1\u00AD3')).toBe('1\u00AD3');
  });

  it('takes a cell of nothing visible for blank, and shows the rest by its code', () => {
    expect(isBlank('\u200B \u200E')).toBe(true);
    expect(plainText(' \u200Bab\uFEFF ')).toBe('ab');
    expect(quoted('1\u200B3')).toBe("'1[U+200B]3'");
  });

  it('takes 32,767 of them in an instant', async () => {
    const text = `1${'\u200B'.repeat(32_765)}1`;
    expect(visibleText(text).length).toBeLessThan(32_768);
    expect(await processorMs(() => visibleText(text))).toBeLessThan(200);
  });
});
