/*
 * XML parts are held as strings with one character per byte, so that every offset is a byte offset
 * and a part can be patched without touching the bytes around the patch. Text taken out of such a
 * string is decoded here, text put into it is encoded here.
 */

const beyondAscii = /[\r\u0080-\u00ff]/;
const special = /[&\r\u0080-\u00ff]/;
const decoder = new TextDecoder('utf-8');

/** Raw bytes-as-characters to text: UTF-8, entities and line ends resolved. */
export function decodeText(raw: string): string {
  if (!special.test(raw)) return raw;
  return withoutEntities(beyondAscii.test(raw) ? fromUtf8(raw) : raw);
}

function fromUtf8(raw: string): string {
  const bytes = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) bytes[i] = raw.charCodeAt(i);
  return decoder.decode(bytes).replace(/\r\n?/g, '\n');
}

/** Quotes and ampersands are in nearly every formula with a text: they are put in without a look at each. */
function withoutEntities(text: string): string {
  if (!text.includes('&')) return text;
  const quoted = text.replaceAll('&quot;', '"');
  if (!/&(?!amp;)/.test(quoted)) return quoted.replaceAll('&amp;', '&');
  return text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]{2,4});/gi, entity);
}

const named: Record<string, string> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

function entity(whole: string, name: string): string {
  if (!name.startsWith('#')) return named[name] ?? whole;
  const code = /^#x/i.test(name) ? parseInt(name.slice(2), 16) : parseInt(name.slice(1), 10);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
}

/** Spreadsheet strings escape characters that XML forbids as `_xHHHH_`. */
export function unescapeString(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9a-f]{4})_/gi, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));
}

const encoder = new TextEncoder();

/** Characters XML 1.0 has no place for, halves of surrogate pairs included. */
function isForbidden(code: number): boolean {
  return (
    (code < 32 && code !== 9 && code !== 10) ||
    (code >= 0xd800 && code <= 0xdfff) ||
    code === 0xfffe ||
    code === 0xffff
  );
}

function escapeCharacter(character: string): string {
  if (character === '&') return '&amp;';
  if (character === '<') return '&lt;';
  if (character === '>') return '&gt;';
  const code = character.codePointAt(0) as number;
  return isForbidden(code) ? `_x${code.toString(16).toUpperCase().padStart(4, '0')}_` : character;
}

/** Text to raw bytes-as-characters for an element's content, with the spreadsheet's own escapes. */
export function encodeString(text: string): string {
  if (/^[\w .,;:!?/()'"@#%=+*~-]*$/.test(text) && !text.includes('_x')) return text;
  const guarded = text.replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_');
  let raw = '';
  for (const byte of encoder.encode([...guarded].map(escapeCharacter).join('')))
    raw += String.fromCharCode(byte);
  return raw;
}

/** Text for an attribute's value; a line break in the format's own escape, which programs put into headings. */
export const attributeText = (text: string): string =>
  encodeString(text).replaceAll('"', '&quot;').replaceAll('\n', '_x000a_').replaceAll('\t', '_x0009_');
