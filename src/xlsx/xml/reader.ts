import { entriesInTurn, type Pausing } from '../pausing.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { decodeText } from './text.js';

const LESS = 60;
const GREATER = 62;
const SLASH = 47;
const COLON = 58;
const EQUALS = 61;
const DOUBLE = 34;
const SINGLE = 39;

const tagsInTurn = 8 * entriesInTurn;

const broken = () => refuseWorkbook('The file is damaged: one of its parts is not well-formed XML.');

/**
 * Reads tags forward, once, without building a tree. Names are local names: prefixes are dropped.
 * A document type or an entity declaration is refused.
 */
export class XmlReader {
  readonly xml: string;
  /** Where reading goes on. */
  position = 0;
  /** Local name, prefix with its colon, and bounds of the tag just read. */
  name = '';
  prefix = '';
  tagStart = 0;
  tagEnd = 0;
  closing = false;
  /** The tag is `<name/>`: it has no content and no closing tag. */
  empty = false;
  private attributesStart = 0;

  constructor(xml: string) {
    this.xml = xml;
  }

  /** Moves to the next tag; false at the end of the part. */
  next(): boolean {
    const { xml } = this;
    for (;;) {
      const start = xml.indexOf('<', this.position);
      if (start < 0) return false;
      const code = xml.charCodeAt(start + 1);
      if (code !== 33 && code !== 63) {
        this.readTag(start, code);
        return true;
      }
      this.position = this.skipped(start);
    }
  }

  private readTag(start: number, code: number): void {
    const { xml } = this;
    this.tagStart = start;
    this.closing = code === SLASH;
    let at = start + (this.closing ? 2 : 1);
    let nameStart = at;
    this.prefix = '';
    for (; ; at++) {
      const c = xml.charCodeAt(at);
      if (c === COLON) {
        this.prefix = xml.slice(nameStart, at + 1);
        nameStart = at + 1;
      } else if (c <= 32 || c === GREATER || c === SLASH) break;
      else if (c !== c || c === LESS) broken();
    }
    this.name = xml.slice(nameStart, at);
    this.attributesStart = at;
    const end = this.tagClose(at);
    this.empty = xml.charCodeAt(end - 1) === SLASH;
    this.tagEnd = this.position = end + 1;
  }

  private tagClose(from: number): number {
    const { xml } = this;
    for (let at = from; at < xml.length; at++) {
      const c = xml.charCodeAt(at);
      if (c === GREATER) return at;
      if (c === DOUBLE || c === SINGLE) {
        at = xml.indexOf(c === DOUBLE ? '"' : "'", at + 1);
        if (at < 0) broken();
      } else if (c === LESS) broken();
    }
    return broken();
  }

  /** Where a comment, instruction or character data section that starts here ends. */
  private skipped(start: number): number {
    const { xml } = this;
    const [close, length] = xml.startsWith('<!--', start)
      ? ['-->', 3]
      : xml.startsWith('<![CDATA[', start)
        ? [']]>', 3]
        : xml.charCodeAt(start + 1) === 63
          ? ['?>', 2]
          : ['', 0];
    if (!close) {
      refuseWorkbook(
        'The file is refused: it declares a document type or entities, which workbooks never need.',
      );
    }
    const end = xml.indexOf(close as string, start + 2);
    return end < 0 ? broken() : end + (length as number);
  }

  /** The raw value's bounds of an attribute by local name, or undefined. */
  attributeBounds(wanted: string): { start: number; end: number } | undefined {
    const { xml } = this;
    const end = this.tagEnd - 1;
    let at = this.attributesStart;
    while (at < end) {
      while (at < end && xml.charCodeAt(at) <= 32) at++;
      let nameStart = at;
      let c = 0;
      for (; at < end && (c = xml.charCodeAt(at)) !== EQUALS && c > 32; at++)
        if (c === COLON) nameStart = at + 1;
      const nameEnd = at;
      while (at < end && (c = xml.charCodeAt(at)) !== DOUBLE && c !== SINGLE) at++;
      if (at >= end) return undefined;
      const close = xml.indexOf(c === DOUBLE ? '"' : "'", at + 1);
      if (nameEnd - nameStart === wanted.length && xml.startsWith(wanted, nameStart))
        return { start: at + 1, end: close };
      at = close + 1;
    }
    return undefined;
  }

  /** An attribute's text by local name. */
  attribute(wanted: string): string | undefined {
    const bounds = this.attributeBounds(wanted);
    return bounds && decodeText(this.xml.slice(bounds.start, bounds.end));
  }

  /** The text up to this element's closing tag; call it right after its opening tag was read. */
  text(): string {
    if (this.empty) return '';
    const { xml } = this;
    const next = xml.indexOf('<', this.position);
    if (next >= 0 && xml.charCodeAt(next + 1) === SLASH) {
      const text = decodeText(xml.slice(this.position, next));
      this.next();
      return text;
    }
    return this.textInPieces();
  }

  private textInPieces(): string {
    const { xml } = this;
    let text = '';
    for (;;) {
      const start = xml.indexOf('<', this.position);
      if (start < 0) return broken();
      text += decodeText(xml.slice(this.position, start));
      const code = xml.charCodeAt(start + 1);
      if (code !== 33 && code !== 63) {
        this.next();
        if (this.closing) return text;
        this.skipElement();
        continue;
      }
      const end = this.skipped(start);
      if (xml.startsWith('<![CDATA[', start)) {
        text += decodeText(xml.slice(start + 9, end - 3).replace(/&/g, '&amp;'));
      }
      this.position = end;
    }
  }

  /** Moves past the closing tag of the element whose opening tag was just read. */
  skipElement(): void {
    if (this.empty) return;
    for (let depth = 1; depth > 0; ) depth += this.step();
  }

  /** The same, with rests. */
  *skippingElement(): Pausing<void> {
    if (this.empty) return;
    for (let [depth, tags] = [1, 1]; depth > 0; tags++) {
      depth += this.step();
      if (tags % tagsInTurn === 0) yield;
    }
  }

  /** How much deeper the next tag leads. */
  private step(): number {
    if (!this.next()) broken();
    if (this.closing) return -1;
    return this.empty ? 0 : 1;
  }
}
