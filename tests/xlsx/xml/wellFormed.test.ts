import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WorkbookRefused } from '../../../src/xlsx/refusal/refusal.js';
import { atOnce } from '../../../src/xlsx/pausing.js';
import { checkWellFormed } from '../../../src/xlsx/xml/wellFormed.js';
import { checkUtf8 } from '../../../src/xlsx/xml/characters.js';
import { workbookParts } from '../support/buildWorkbook.js';

/** A strict parser of XML, which two libraries of the tests bring. */
interface StrictParser {
  write(xml: string): StrictParser;
  close(): void;
}
const ofJsdom = createRequire(createRequire(import.meta.url).resolve('jsdom'));
const { SaxesParser } = ofJsdom('saxes') as {
  SaxesParser: new (options: { xmlns: boolean }) => StrictParser;
};

/** What a general parser of XML says. */
function isXml(xml: string): boolean {
  try {
    new SaxesParser({ xmlns: true }).write(xml).close();
    return true;
  } catch {
    return false;
  }
}

function isAccepted(xml: string): boolean {
  try {
    atOnce(checkUtf8(Buffer.from(xml)));
    atOnce(checkWellFormed(Buffer.from(xml).toString('latin1')));
    return true;
  } catch (error) {
    expect(error).toBeInstanceOf(WorkbookRefused);
    return false;
  }
}

const parts = Object.values(
  workbookParts(
    [
      {
        name: 'Quote & "parts"',
        rows: [
          ['Mark', 1.5, true, null],
          ['Ø13/16 < 1', { attributes: ' t="str"', inner: '<f>A1&amp;"]]"</f><v>a &gt; b</v>' }],
        ],
        tables: [{ name: 'Parts', ref: 'A1:B2', columns: ['Mark', 'Qty'] }],
        after: '<!-- a note --><x:a xmlns:x="urn:a" x:b="1"><?go on?><![CDATA[<&]]></x:a>',
      },
    ],
    { names: { Rate: '\'Quote & "parts"\'!$B$1' } },
  ),
);

const pieces = [
  '<',
  '>',
  '/',
  '"',
  "'",
  '&',
  ';',
  '=',
  ' ',
  ':',
  '-',
  '!',
  '?',
  ']',
  '\u0000',
  '\ufffe',
  'a',
  '</c>',
];
pieces.push(
  '<c>',
  '&amp;',
  '&#x0;',
  '&#65;',
  '&nbsp;',
  ']]>',
  '--',
  '<a:b/>',
  ' r="1"',
  'xmlns:q="urn:q"',
  '<?xml?>',
);

describe('a part that is read', () => {
  it.each(parts.map((part) => [part]))('is accepted as it stands: %#', (part) => {
    expect(isXml(part)).toBe(true);
    expect(isAccepted(part)).toBe(true);
  });

  it('is refused exactly where a general parser refuses it: cut off, with pieces put in, left out or moved', () => {
    const mutant = fc.record({
      part: fc.constantFrom(...parts),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      gone: fc.nat(12),
      put: fc.array(fc.constantFrom(...pieces), { maxLength: 2 }),
      cut: fc.integer({ min: 0, max: 9 }),
    });
    let refused = 0;
    fc.assert(
      fc.property(mutant, ({ part, at, gone, put, cut }) => {
        const place = Math.floor(at * part.length);
        const rest = cut === 0 ? '' : part.slice(place + gone);
        const xml = part.slice(0, place) + put.join('') + rest;
        if (/<!(?!--|\[CDATA\[)/.test(xml)) return;
        const accepted = isAccepted(xml);
        if (!accepted) refused++;
        expect(accepted, xml).toBe(isXml(xml));
      }),
      { numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(1000);
  });

  it.each([
    ['two outermost elements', '<a/><b/>'],
    ['nothing', ''],
    ['text behind the end', '<a/>x'],
    ['text before the start', 'x<a/>'],
    ['an element left open', '<a><b></a>'],
    ['an attribute twice', '<a b="1" b="2"/>'],
    ['an attribute without quotes', '<a b=1/>'],
    ['attributes without space between', '<a b="1"c="2"/>'],
    ['a prefix that nothing declares', '<x:a/>'],
    ['a prefix that has ended', '<a><b xmlns:x="urn:x"/><x:c/></a>'],
    ['an entity of its own', '<a>&mark;</a>'],
    ['a character that XML lacks', '<a>\u0001</a>'],
    ['a number of one', '<a>&#1;</a>'],
    ['a cut comment', '<a><!-- x </a>'],
    ['a second declaration', '<a><?xml version="1.0"?></a>'],
  ])('is refused with %s', (_, xml) => {
    expect(isXml(xml)).toBe(false);
    expect(() => atOnce(checkWellFormed(xml))).toThrow('not well-formed XML');
  });

  it('is refused where its bytes are no UTF-8, or it says so', () => {
    expect(() => atOnce(checkUtf8(Uint8Array.of(60, 0xe9, 62)))).toThrow('not well-formed');
    expect(() => atOnce(checkWellFormed('<?xml version="1.0" encoding="ISO-8859-1"?><a/>'))).toThrow(
      'written in ISO-8859-1, not in UTF-8',
    );
    expect(atOnce(checkWellFormed('<?xml version="1.0" encoding="utf-8"?><a/>'))).toBe(0);
  });

  it('is refused where its elements are nested without end', () => {
    expect(() => atOnce(checkWellFormed('<a>'.repeat(100_000)))).toThrow('nested too deeply');
  });
});

describe('the cells of a part', () => {
  it.each(['<c/><c>1</c><v/><cc/>', '<x:c/><x:c>1</x:c><x:v/><x:cc/>'])('are counted: %s', (inside) => {
    expect(atOnce(checkWellFormed(`<a xmlns:x="urn:x">${inside}</a>`))).toBe(2);
  });
});
