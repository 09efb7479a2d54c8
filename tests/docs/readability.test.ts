// By the formula of Flesch and Kincaid (US Navy, 1975) of a general library: the grade of a school that a text asks for.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { messagesOf } from './support/messages.js';
import { gradeOf, proseOf } from './support/readability.js';

const highestGrade = 8;
/** One sentence may ask for more, as far as a name or two of the trade go. */
const highestOfOne = 11;

const src = path.join(root, 'src');
const messages = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .flatMap((file) => messagesOf(path.join(src, file)).map((text) => ({ file, text })));

describe('the measure', () => {
  it('tells a plain sentence from a heavy one', () => {
    expect(gradeOf(['The hole is too close to the edge. Move it.'])).toBeLessThan(2);
    expect(
      gradeOf(['Insufficient dimensional information prohibits determination of manufacturability.']),
    ).toBeGreaterThan(20);
  });

  it('leaves out what is not read as a sentence', () => {
    expect(proseOf('# Head\n\n- One `3/8` [place](x.md).\n\n  ```\n  run it\n  ```\n\n| a | b |\n')).toEqual([
      'One 3/8 place.',
    ]);
  });
});

describe('messages are plain', () => {
  it('all together', () => {
    expect(messages.length).toBeGreaterThan(1000);
    expect(gradeOf(messages.map(({ text }) => text))).toBeLessThanOrEqual(highestGrade);
  });

  it('and each of them', () => {
    expect(messages.filter(({ text }) => gradeOf([text]) > highestOfOne)).toEqual([]);
  });
});

describe('pages are plain', () => {
  it.each([
    'README.md',
    ...[
      'administrator',
      'estimator',
      'headings',
      'notation',
      'reference',
      'shop-sheet',
      'troubleshooting',
    ].map((name) => `docs/${name}.md`),
  ])('%s', (page) => {
    const prose = proseOf(readFileSync(path.join(root, page), 'utf8'));
    expect(prose.length).toBeGreaterThan(2);
    expect(gradeOf(prose)).toBeLessThanOrEqual(highestGrade);
  });
});
