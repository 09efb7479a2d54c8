import { entriesInTurn, type Pausing } from '../pausing.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { broken, checkPlain, isSpace, nameEnd, spaceEnd, textEnd, valueEnd } from './characters.js';
import { OpenElements } from './openElements.js';

const tagsInTurn = 8 * entriesInTurn;

const BANG = 33;
const SLASH = 47;
const COLON = 58;
const LESS = 60;
const EQUALS = 61;
const GREATER = 62;
const QUESTION = 63;
const LOWER_C = 99;

const declaration =
  /^<\?xml\s+version\s*=\s*(["'])1\.\d\1(?:\s+encoding\s*=\s*(["'])([A-Za-z][\w.-]*)\2)?(?:\s+standalone\s*=\s*(["'])(?:yes|no)\4)?\s*\?>/;

/**
 * Reads a part from its first byte to its last, and refuses it where it is not well-formed XML with namespaces: what is
 * cut off or damaged must not count as read. Gives how many elements are named `c`, with a prefix or
 * without, as the cells of a sheet are.
 */
export function* checkWellFormed(xml: string): Pausing<number> {
  return yield* new PartChecker(xml).check();
}

class PartChecker {
  private at = 0;
  private cells = 0;
  private readonly open: OpenElements;
  /** Where the names of an element's attributes start and end, in turns. */
  private readonly attributes: number[] = [];

  constructor(private readonly xml: string) {
    this.open = new OpenElements(xml);
  }

  *check(): Pausing<number> {
    const { xml, open } = this;
    this.at = xml.startsWith('\xef\xbb\xbf') ? 3 : 0;
    this.declaration();
    this.between();
    if (xml.charCodeAt(this.at) !== LESS) broken();
    this.element();
    for (let tags = 1; open.depth > 0; tags++) {
      this.at = textEnd(xml, this.at);
      this.markup();
      if (tags % tagsInTurn === 0) yield;
    }
    this.between();
    if (this.at < xml.length) broken();
    return this.cells;
  }

  private declaration(): void {
    const { xml, at } = this;
    if (!xml.startsWith('<?xml', at) || !isSpace(xml, at + 5)) return;
    const [whole = broken(), , , encoding = 'utf-8'] = declaration.exec(xml.slice(at, at + 200)) ?? [];
    if (!/^(?:utf-?8|us-ascii)$/i.test(encoding))
      refuseWorkbook(`The file is refused: one of its parts is written in ${encoding}, not in UTF-8.`);
    this.at += whole.length;
  }

  /** White space, comments and instructions around the outermost element. */
  private between(): void {
    const { xml } = this;
    for (;;) {
      this.at = spaceEnd(xml, this.at);
      const next = xml.charCodeAt(this.at + 1);
      if (xml.charCodeAt(this.at) !== LESS || (next !== BANG && next !== QUESTION)) return;
      if (xml.startsWith('<![CDATA[', this.at)) broken();
      this.markup();
    }
  }

  /** What starts with `<` here. */
  private markup(): void {
    const next = this.xml.charCodeAt(this.at + 1);
    if (next === SLASH) this.close();
    else if (next === QUESTION) this.instruction();
    else if (next === BANG) this.commentOrText();
    else this.element();
  }

  private instruction(): void {
    const { xml } = this;
    const end = nameEnd(xml, this.at + 2);
    const close = xml.indexOf('?>', end);
    const name = xml.slice(this.at + 2, end);
    if (close < 0 || (close > end && !isSpace(xml, end)) || /^xml$|:/i.test(name)) broken();
    checkPlain(xml, end, close);
    this.at = close + 2;
  }

  private commentOrText(): void {
    const { xml, at } = this;
    const isComment = xml.startsWith('<!--', at);
    if (!isComment && !xml.startsWith('<![CDATA[', at))
      refuseWorkbook(
        'The file is refused: it declares a document type or entities, which workbooks never need.',
      );
    const start = at + (isComment ? 4 : 9);
    const end = xml.indexOf(isComment ? '--' : ']]>', start);
    if (end < 0 || (isComment && xml.charCodeAt(end + 2) !== GREATER)) broken();
    checkPlain(xml, start, end);
    this.at = end + 3;
  }

  private element(): void {
    const { xml, open, attributes } = this;
    const start = this.at + 1;
    const end = nameEnd(xml, start);
    const isShort = end === start + 1 || xml.charCodeAt(end - 2) === COLON;
    if (isShort && xml.charCodeAt(end - 1) === LOWER_C) this.cells++;
    open.enter(start, end);
    const tagEnd = this.readAttributes(end);
    open.checkName(start, end);
    for (let i = 0; i < attributes.length; i += 2)
      open.checkName(attributes[i] as number, attributes[i + 1] as number);
    const isEmpty = xml.charCodeAt(tagEnd) === SLASH;
    if (isEmpty) open.leaveEmpty();
    this.at = tagEnd + (isEmpty ? 2 : 1);
  }

  /** Reads the attributes behind an element's name; gives where its `>` or `/>` starts. */
  private readAttributes(from: number): number {
    const { xml, attributes } = this;
    attributes.length = 0;
    for (let at = from; ; ) {
      const start = spaceEnd(xml, at);
      const code = xml.charCodeAt(start);
      if (code === GREATER || (code === SLASH && xml.charCodeAt(start + 1) === GREATER)) {
        if (attributes.length > 2) this.checkTwice();
        return start;
      }
      if (start === at) broken();
      const end = nameEnd(xml, start);
      const equals = spaceEnd(xml, end);
      if (xml.charCodeAt(equals) !== EQUALS) broken();
      at = valueEnd(xml, spaceEnd(xml, equals + 1)) + 1;
      this.keepAttribute(start, end);
    }
  }

  private keepAttribute(start: number, end: number): void {
    const { xml } = this;
    if (xml.charCodeAt(start + 5) === COLON && xml.startsWith('xmlns:', start))
      this.open.declare(xml.slice(start + 6, end));
    else this.attributes.push(start, end);
  }

  /** Refuses an element that has an attribute twice. */
  private checkTwice(): void {
    const { xml, attributes } = this;
    const names = new Set<string>();
    for (let i = 0; i < attributes.length; i += 2)
      names.add(xml.slice(attributes[i] as number, attributes[i + 1] as number));
    if (names.size < attributes.length / 2) broken();
  }

  private close(): void {
    const { xml } = this;
    const end = spaceEnd(xml, this.open.leave(this.at + 2));
    if (xml.charCodeAt(end) !== GREATER) broken();
    this.at = end + 1;
  }
}
