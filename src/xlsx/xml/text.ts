/*
 * XML parts are held as strings with one character per byte, so that every offset is a byte offset
 * and a part can be patched without touching the bytes around the patch. Text taken out of such a
 * string is decoded here, text put into it is encoded here.
 */

const special = /[&\r\u0080-\u00ff]/;
const decoder = new TextDecoder('utf-8');

/** Raw bytes-as-characters to text: UTF-8, entities and line ends resolved. */
export function decodeText(raw: string): string {
  if (!special.test(raw)) return raw;
  const bytes = new Uint8Array(raw.length);
  for (let i = 0; i < raw.length; i++) bytes[i] = raw.charCodeAt(i);
  const text = decoder.decode(bytes).replace(/\r\n?/g, '\n');
  return text.includes('&') ? text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]{2,4});/gi, entity) : text;
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

/** Text to raw bytes-as-characters for an element's content, with the spreadsheet's own escapes. */
export function encodeString(text: string): string {
  const escaped = text
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    // eslint-disable-next-line no-control-regex
    .replace(
      /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
      (c) => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    )
    .replace(/[&<>]/g, (c) => (c === '&' ? '&amp;' : c === '<' ? '&lt;' : '&gt;'));
  // eslint-disable-next-line no-control-regex
  if (!/[^\u0000-\u007f]/.test(escaped)) return escaped;
  let raw = '';
  for (const byte of encoder.encode(escaped)) raw += String.fromCharCode(byte);
  return raw;
}
