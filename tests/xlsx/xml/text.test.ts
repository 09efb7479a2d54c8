import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeText } from '../../../src/xlsx/xml/text.js';

/** A strict parser of XML, which a library of the tests brings. */
interface StrictParser {
  on(event: 'text', tell: (text: string) => void): void;
  write(xml: string): StrictParser;
  close(): void;
}
const { SaxesParser } = createRequire(createRequire(import.meta.url).resolve('jsdom'))('saxes') as {
  SaxesParser: new () => StrictParser;
};

function textOf(raw: string): string {
  let text = '';
  const parser = new SaxesParser();
  parser.on('text', (piece) => (text += piece));
  parser.write(`<f>${raw}</f>`).close();
  return text;
}

const pieces = [
  '&quot;',
  '&amp;',
  '&lt;',
  '&gt;',
  '&apos;',
  '&#65;',
  '&#x42;',
  'quot;',
  'amp;',
  '#65;',
  ';',
  '"',
  'FB 3/8',
  ' ',
];

describe('the text of an element', () => {
  it('is what a general parser reads', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 12 }), (list) => {
        const raw = list.join('');
        expect(decodeText(raw)).toBe(textOf(raw));
      }),
      { numRuns: 2000 },
    );
  });
});
