import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WorkbookRefused } from '../../../src/xlsx/refusal/refusal.js';
import { XmlElement } from '../../../src/xlsx/xml/element.js';

const changed = (xml: string, change: (root: XmlElement) => void): string => {
  const part = XmlElement.part(xml);
  change(part.root);
  return String(part);
};

/** Elements as different programs write them: quotes, spaces, prefixes, both forms of nothing inside. */
const element = fc.letrec<{ inner: string; element: string }>((tie) => ({
  inner: fc
    .array(
      fc.oneof(
        { depthSize: 'small', maxDepth: 4 },
        fc.constantFrom('', 'text', ' ', '\n', '&lt;', '<!-- <note> -->', '<![CDATA[<x>]]>'),
        tie('element'),
      ),
      { maxLength: 4 },
    )
    .map((pieces) => pieces.join('')),
  element: fc
    .record({
      name: fc.constantFrom('a', 'x:b', 'c1'),
      attributes: fc.constantFrom('', ' r="1"', ' x:r=\'a>b\'  s = "2"', ' t="&amp;" '),
      empty: fc.boolean(),
      inner: tie('inner'),
    })
    .map(({ name, attributes, empty, inner }) =>
      empty ? `<${name}${attributes}/>` : `<${name}${attributes}>${inner}</${name}>`,
    ),
})).element;

describe('an element that is not changed', () => {
  it('is written as it was, however far it was read', () => {
    fc.assert(
      fc.property(element, fc.constantFrom('', '<?xml version="1.0"?>\n'), (xml, head) => {
        const read = changed(head + xml, (root) => {
          for (const each of root.within()) each.attribute('r');
          root.keep(() => true);
        });
        expect(read).toBe(head + xml);
      }),
      { numRuns: 300 },
    );
  });

  it('is refused where there is none', () => {
    expect(() => XmlElement.part('<?xml version="1.0"?>')).toThrow(WorkbookRefused);
  });
});

describe('an element that is changed', () => {
  it.each<[string, (root: XmlElement) => void, string]>([
    ['<c r="A1" s="2"/>', (c) => c.set({ s: 3 }), '<c r="A1" s="3"/>'],
    ['<c r="A1" s="2" t="b"/>', (c) => c.set({ s: undefined }), '<c r="A1" t="b"/>'],
    ["<c n='a' />", (c) => c.set({ n: `it's "b" & c` }), "<c n='it&apos;s &quot;b&quot; &amp; c' />"],
    ['<c/>', (c) => c.set({ n: 'a<b' }), '<c n="a&lt;b"/>'],
    ['<f>A1</f>', (f) => (f.text = 'A1&"<"'), '<f>A1&amp;"&lt;"</f>'],
    ['<f><![CDATA[A1]]></f>', (f) => (f.text = 'A1'), '<f><![CDATA[A1]]></f>'],
    ['<a><b/> <c/></a>', (a) => a.keep(({ name }) => name === 'c'), '<a> <c/></a>'],
    ['<a><b/></a>', (a) => a.keep(() => false), '<a/>'],
  ])('%s', (before, change, after) => {
    expect(changed(before, change)).toBe(after);
  });

  it.each<[string, (root: XmlElement) => void, string]>([
    ['<font><b/><sz val="9"/></font>', (font) => font.put('i', '<i/>'), '<font><b/><i/><sz val="9"/></font>'],
    ['<font><b/><i/></font>', (font) => font.put('b', undefined), '<font><i/></font>'],
    ['<font><sz val="9"/></font>', (font) => font.put('sz', '<sz val="8"/>'), '<font><sz val="8"/></font>'],
    ['<x:c r="A1"/>', (c) => c.put('v', '<v>1</v>'), '<x:c r="A1"><x:v>1</x:v></x:c>'],
    ['<c><v>1</v></c>', (c) => c.put('f', '<f>A2</f>'), '<c><f>A2</f><v>1</v></c>'],
    [
      '<worksheet><sheetData/><pageMargins/></worksheet>',
      (sheet) => sheet.made('cols').insert('<col/>'),
      '<worksheet><cols><col/></cols><sheetData/><pageMargins/></worksheet>',
    ],
    ['<l><b n="1"/><b n="2"/></l>', (l) => l.holds([...l.children].reverse()), '<l><b n="2"/><b n="1"/></l>'],
  ])('has what is put into it where the format has it: %s', (before, change, after) => {
    expect(changed(before, change)).toBe(after);
  });
});
