import { atOnce, entriesInTurn, type Pausing } from '../pausing.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import { elementOrder } from './elementOrder.js';
import { XmlReader } from './reader.js';
import { attributeText, encodeString } from './text.js';

type Content = string | XmlElement;

/** The outermost element of a part, and the part with what became of it. */
export interface XmlPart {
  root: XmlElement;
  toString: () => string;
  /** The same in pieces, with rests. */
  writing: () => Pausing<string[]>;
}

/** Texts of so many characters take long enough to rest while one of their elements is passed over. */
const longText = 100_000;

/**
 * An element that can be changed. What is not changed keeps its bytes, and is read only where it is asked for. Texts
 * put in are written without a prefix and get that of the element; names of attributes are local names.
 */
export class XmlElement {
  readonly name: string;
  readonly prefix: string;
  /** What is inside, as it is written or in pieces. */
  private content: string | Content[];

  /**
   * @param tag the opening tag without its end
   * @param close the closing tag; empty for `<name/>`
   */
  private constructor(
    private tag: string,
    inner: string,
    private close: string,
    { name, prefix }: { name: string; prefix: string },
  ) {
    this.content = inner;
    this.name = name;
    this.prefix = prefix;
  }

  /** A text in its elements and what stands between them. */
  private static readAll(xml: string): Content[] {
    return atOnce(XmlElement.reading(xml));
  }

  private static *reading(xml: string): Pausing<Content[]> {
    const reader = new XmlReader(xml);
    const all: Content[] = [];
    let at = 0;
    while (reader.next()) {
      const { name, prefix, tagStart, tagEnd, empty } = reader;
      if (tagStart > at) all.push(xml.slice(at, tagStart));
      if (xml.length < longText) reader.skipElement();
      else yield* reader.skippingElement();
      const tag = xml.slice(tagStart, tagEnd - (empty ? 2 : 1));
      const [inner, close] = empty
        ? ['', '']
        : [xml.slice(tagEnd, reader.tagStart), xml.slice(reader.tagStart, reader.tagEnd)];
      all.push(new XmlElement(tag, inner, close, { name, prefix }));
      at = reader.position;
      if (all.length % entriesInTurn === 0) yield;
    }
    return at < xml.length ? [...all, xml.slice(at)] : all;
  }

  static part(xml: string): XmlPart {
    return atOnce(XmlElement.readingPart(xml));
  }

  /** The same, with rests. */
  static *readingPart(xml: string): Pausing<XmlPart> {
    const all = yield* XmlElement.reading(xml);
    const root = all.find(isElement) ?? refuseWorkbook('The file is damaged: one of its parts is empty.');
    return { root, toString: () => all.join(''), writing: () => written(all) };
  }

  /** Reads the elements right inside, with rests, so that they are there when they are asked for. */
  *readingInside(): Pausing<void> {
    if (typeof this.content === 'string') this.content = yield* XmlElement.reading(this.content);
  }

  static read(xml: string): XmlElement {
    return XmlElement.part(xml).root;
  }

  attribute(name: string): string | undefined {
    return this.ownTag().attribute(name);
  }

  /** Sets attributes, or takes out those without a value. */
  set(attributes: Readonly<Record<string, string | number | undefined>>): this {
    for (const [name, value] of Object.entries(attributes)) {
      const bounds = this.ownTag().attributeBounds(name);
      const { tag } = this;
      const text = attributeText(String(value));
      if (bounds && value !== undefined)
        this.tag = tag.slice(0, bounds.start) + inQuotes(text, tag[bounds.start - 1]) + tag.slice(bounds.end);
      else if (bounds) {
        const before = tag.slice(0, bounds.start).replace(/\s+[\w:.-]+\s*=\s*["']$/, '');
        this.tag = (before + tag.slice(bounds.end + 1)).trimEnd();
      } else if (value !== undefined) this.tag = `${tag.trimEnd()} ${name}="${text}"`;
    }
    return this;
  }

  get text(): string {
    const reader = new XmlReader(String(this));
    reader.next();
    return reader.text();
  }

  set text(text: string) {
    if (text !== this.text) this.content = encodeString(text);
  }

  /** The elements right inside. */
  get children(): XmlElement[] {
    return this.pieces().filter(isElement);
  }

  child(name: string): XmlElement | undefined {
    return this.children.find((child) => child.name === name);
  }

  /** Everything inside, however deep; what is inside of elements that are passed over is left out. */
  *within(passedOver?: string): Generator<XmlElement> {
    for (const child of this.children) {
      yield child;
      if (child.name !== passedOver) yield* child.within(passedOver);
    }
  }

  /** Takes out the elements right inside that do not pass. */
  keep(stays: (child: XmlElement) => boolean): this {
    const pieces = this.pieces();
    const kept = pieces.filter((piece) => !isElement(piece) || stays(piece));
    if (kept.length < pieces.length) this.fill(kept);
    return this;
  }

  /** Takes out the elements of a name, and puts new ones in their place or where the order of the format has them. */
  put(name: string, text: string | undefined): void {
    const old = this.child(name);
    const next = old ?? this.after(name);
    if (text) this.insert(text, next);
    if (old) this.keep((child) => child !== old);
  }

  /** The element of a name right inside, made where it is missing. */
  made(name: string, text = `<${name}/>`): XmlElement {
    return this.child(name) ?? this.insert(text, this.after(name));
  }

  /** Puts elements before another, or behind all; gives the first of them. */
  insert(text: string, before?: XmlElement): XmlElement {
    const come = XmlElement.readAll(withPrefix(text, this.prefix));
    const pieces = this.pieces();
    // What is put in is a few elements of our own writing.
    // eslint-disable-next-line no-restricted-syntax
    pieces.splice(before ? pieces.indexOf(before) : pieces.length, 0, ...come);
    return come.find(isElement) as XmlElement;
  }

  /** Has these inside, in this order. */
  holds(children: readonly XmlElement[]): void {
    this.fill([...children]);
  }

  toString(): string {
    const inner = typeof this.content === 'string' ? this.content : this.content.join('');
    if (inner === '' && this.close === '') return `${this.tag}/>`;
    const [before, after] = this.around();
    return before + inner + after;
  }

  /** The same in pieces: an element whose inside was read is taken apart. */
  *written(): Generator<string> {
    if (typeof this.content === 'string' || this.content.length === 0) return yield String(this);
    const [before, after] = this.around();
    yield before;
    for (const piece of this.content) {
      if (isElement(piece)) yield* piece.written();
      else yield piece;
    }
    yield after;
  }

  private around(): [before: string, after: string] {
    const tag = this.close === '' ? this.tag.trimEnd() : this.tag;
    return [`${tag}>`, this.close || `</${this.prefix}${this.name}>`];
  }

  private ownTag(): XmlReader {
    const reader = new XmlReader(`${this.tag}>`);
    reader.next();
    return reader;
  }

  private pieces(): Content[] {
    if (typeof this.content === 'string') this.content = XmlElement.readAll(this.content);
    return this.content;
  }

  private fill(content: Content[]): void {
    this.content = content;
    if (content.length === 0) this.close = '';
  }

  /** The first child that comes behind one of a name. */
  private after(name: string): XmlElement | undefined {
    const order = elementOrder[this.name] ?? [];
    const rank = order.indexOf(name);
    return rank < 0 ? undefined : this.children.find((child) => order.indexOf(child.name) > rank);
  }
}

/** A text in longer pieces, with rests: put together as one text, a long part would be copied in one task. */
function* written(contents: readonly Content[]): Pausing<string[]> {
  const pieces: string[] = [];
  let short: string[] = [];
  for (const content of contents) {
    for (const text of isElement(content) ? content.written() : [content]) {
      short.push(text);
      if (short.length < entriesInTurn) continue;
      pieces.push(short.join(''));
      short = [];
      yield;
    }
  }
  return [...pieces, short.join('')];
}

const isElement = (content: Content): content is XmlElement => content instanceof XmlElement;

const inQuotes = (text: string, quote = '"'): string =>
  quote === "'" ? text.replaceAll("'", '&apos;') : text;

export const withPrefix = (text: string, prefix: string): string =>
  prefix === '' ? text : text.replaceAll(/<(\/?)(?=\w+[\s/>])/g, `<$1${prefix}`);
