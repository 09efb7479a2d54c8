import { inflateSync } from 'node:zlib';

/**
 * The texts of each page of a PDF as the browser writes it, without blanks. Reads only what that needs: page objects,
 * their streams, and the maps from glyphs to letters.
 */
export function pagesOfPdf(bytes: Buffer): string[] {
  const objects = objectsOf(bytes);
  const maps = new Map<string, Map<string, string>>();
  const mapOf = (font: string) => {
    const [, unicode] = /\/ToUnicode (\d+) 0 R/.exec(objects.get(font)?.head ?? '') ?? [];
    if (unicode === undefined) return new Map<string, string>();
    const known = maps.get(unicode) ?? lettersOf(objects.get(unicode)?.stream ?? '');
    maps.set(unicode, known);
    return known;
  };
  const all = [...objects.values()];
  const pages = all.filter(({ head }) => /\/Type\s*\/Page\b/.test(head));
  return pages.map(({ head }) => {
    const fonts = new Map(
      [...head.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name = '', id = '']) => [name, mapOf(id)]),
    );
    const [, contents = ''] = /\/Contents (\d+) 0 R/.exec(head) ?? [];
    return textOf(objects.get(contents)?.stream ?? '', fonts);
  });
}

interface PdfObject {
  head: string;
  stream: string;
}

function objectsOf(bytes: Buffer): Map<string, PdfObject> {
  const text = bytes.toString('latin1');
  const found = new Map<string, PdfObject>();
  for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const [, id = '', body = ''] = match;
    const at = body.indexOf('stream\n');
    const head = at < 0 ? body : body.slice(0, at);
    const packed = at < 0 ? '' : body.slice(at + 'stream\n'.length, body.lastIndexOf('\nendstream'));
    const isPacked = head.includes('/FlateDecode');
    const stream = isPacked ? inflateSync(Buffer.from(packed, 'latin1')).toString('latin1') : packed;
    found.set(id, { head, stream });
  }
  return found;
}

function lettersOf(map: string): Map<string, string> {
  const letters = new Map<string, string>();
  const unicode = (hex: string) =>
    String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((code) => Number.parseInt(code, 16)));
  for (const [, block = ''] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph = '', to = ''] of block.matchAll(/<(\w+)> <(\w+)>/g))
      letters.set(glyph.toLowerCase(), unicode(to));
  for (const [, block = ''] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from = '', to = '', first = ''] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      const start = Number.parseInt(from, 16);
      for (let code = start; code <= Number.parseInt(to, 16); code += 1)
        letters.set(
          code.toString(16).padStart(from.length, '0'),
          String.fromCharCode(Number.parseInt(first, 16) + code - start),
        );
    }
  return letters;
}

function textOf(stream: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let font: ReadonlyMap<string, string> | undefined;
  let text = '';
  for (const [, name, glyphs] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|<([\da-f]+)>/gi)) {
    if (name !== undefined) font = fonts.get(name);
    for (const glyph of glyphs?.match(/.{4}/g) ?? []) text += font?.get(glyph.toLowerCase()) ?? '';
  }
  return text.replaceAll(/\s/g, '');
}
