import { bytesInTurn, type Pausing } from '../pausing.js';
import { refuseWorkbook } from '../refusal/refusal.js';

/*
 * What may stand in XML 1.0, byte by byte: parts are held with one character per byte.
 */

const PLAIN = 1;
const SPACE = 2;
const NAME = 4;
const NAME_START = 8;
/** Needs a look in text or in an attribute's value. */
const STOP = 16;

const kinds = new Uint8Array(256);
for (let code = 0; code < 256; code++) {
  const character = String.fromCharCode(code);
  const isSpace = /[\t\n\r ]/.test(character);
  const startsName = code >= 0x80 || /[A-Z_:]/i.test(character);
  kinds[code] =
    (code >= 32 || isSpace ? PLAIN : STOP) |
    (isSpace ? SPACE : 0) |
    (startsName || /[\d.-]/.test(character) ? NAME : 0) |
    (startsName ? NAME_START : 0) |
    (/[<&\]]/.test(character) ? STOP : 0);
}

const is = (xml: string, at: number, kind: number): boolean =>
  ((kinds[xml.charCodeAt(at)] as number) & kind) !== 0;

export const isSpace = (xml: string, at: number): boolean => is(xml, at, SPACE);

export function broken(): never {
  return refuseWorkbook('The file is damaged: one of its parts is not well-formed XML.');
}

export function spaceEnd(xml: string, start: number): number {
  let at = start;
  while (is(xml, at, SPACE)) at++;
  return at;
}

/** Where the name ends that starts here. */
export function nameEnd(xml: string, start: number): number {
  if (!is(xml, start, NAME_START)) broken();
  let at = start + 1;
  while (is(xml, at, NAME)) at++;
  return at;
}

/** Where the next tag starts. */
export function textEnd(xml: string, start: number): number {
  for (let at = start; at < xml.length; at++) {
    if (!is(xml, at, STOP)) continue;
    const character = xml[at];
    if (character === '<') return at;
    if (character === '&') at = entityEnd(xml, at);
    else if (character !== ']' || xml.startsWith(']]>', at)) broken();
  }
  return broken();
}

/** Where the quotes close that open here. */
export function valueEnd(xml: string, start: number): number {
  const quote = xml.charCodeAt(start);
  if (quote !== 34 && quote !== 39) broken();
  for (let at = start + 1; at < xml.length; at++) {
    if (xml.charCodeAt(at) === quote) return at;
    if (!is(xml, at, STOP) || xml[at] === ']') continue;
    if (xml[at] !== '&') broken();
    at = entityEnd(xml, at);
  }
  return broken();
}

const entity = /&(?:lt|gt|amp|quot|apos|#(\d{1,7})|#x([\da-f]{1,6}));/iy;

/** Where the entity ends that starts here; it must be one that every part may have. */
function entityEnd(xml: string, start: number): number {
  entity.lastIndex = start;
  const found = entity.exec(xml);
  if (!found) return broken();
  const [whole, decimal, hexadecimal] = found;
  const isNamed = decimal === undefined && hexadecimal === undefined;
  if (isNamed ? whole !== whole.toLowerCase() : whole.startsWith('&#X')) broken();
  if (!isNamed && !isCharacter(decimal === undefined ? parseInt(hexadecimal as string, 16) : Number(decimal)))
    broken();
  return start + whole.length - 1;
}

const isCharacter = (code: number): boolean =>
  code === 9 ||
  code === 10 ||
  code === 13 ||
  (code >= 0x20 && code <= 0xd7ff) ||
  (code >= 0xe000 && code <= 0xfffd) ||
  (code >= 0x10000 && code <= 0x10ffff);

/** Refuses what no comment, instruction or text may have. */
export function checkPlain(xml: string, start: number, end: number): void {
  for (let at = start; at < end; at++) if (!is(xml, at, PLAIN)) broken();
}

/** Refuses bytes that are no UTF-8, and the two characters that XML leaves out of it. */
export function* checkUtf8(bytes: Uint8Array): Pausing<void> {
  for (let at = 0; at < bytes.length; ) {
    let end = Math.min(at + bytesInTurn, bytes.length);
    // No piece begins within a character.
    while (((bytes[end] ?? 0) & 0xc0) === 0x80) end++;
    checkPiece(bytes.subarray(at, end));
    at = end;
    yield;
  }
}

function checkPiece(bytes: Uint8Array): void {
  let at = 0;
  while (at < bytes.length && (bytes[at] as number) < 0x80) at++;
  if (at === bytes.length) return;
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return broken();
  }
  if (/[\ufffe\uffff]/.test(text)) broken();
}
