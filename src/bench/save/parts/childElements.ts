import { XmlReader } from '../../../xlsx/xml/reader.js';

export interface ChildElement {
  name: string;
  text: string;
  start: number;
  end: number;
}

/** The elements right inside an element, in order. */
export function childElements(element: string): ChildElement[] {
  const reader = new XmlReader(element);
  if (!reader.next() || reader.empty) return [];
  const children: ChildElement[] = [];
  while (reader.next() && !reader.closing) {
    const { name, tagStart: start } = reader;
    reader.skipElement();
    children.push({ name, text: element.slice(start, reader.position), start, end: reader.position });
  }
  return children;
}

/**
 * An element with one of its children replaced, taken out (no text) or put where the order of the format has it.
 * The text is written without a prefix and gets that of the element.
 */
export function withChild(
  element: string,
  name: string,
  text: string | undefined,
  order: readonly string[],
): string {
  const reader = new XmlReader(element);
  reader.next();
  const { prefix, empty, tagEnd } = reader;
  const put = text === undefined ? '' : withPrefix(text, prefix);
  const children = childElements(element);
  const old = children.find((child) => child.name === name);
  if (old) return element.slice(0, old.start) + put + element.slice(old.end);
  if (put === '') return element;
  if (empty) return `${element.slice(0, tagEnd - 2).trimEnd()}>${put}</${prefix}${reader.name}>`;
  const rank = order.indexOf(name);
  const next = children.find((child) => order.indexOf(child.name) > rank);
  const at = next?.start ?? children[children.length - 1]?.end ?? tagEnd;
  return element.slice(0, at) + put + element.slice(at);
}

/** Elements with a prefix where they are written without one. */
export const withPrefix = (text: string, prefix: string): string =>
  prefix === '' ? text : text.replaceAll(/<(\/?)(?=\w+[\s/>])/g, `<$1${prefix}`);
