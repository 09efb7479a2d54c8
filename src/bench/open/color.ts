import type { XmlReader } from '../../xlsx/xml/reader.js';

/** The colour that an element names, as `#1F2933`; undefined for one of a theme or a palette. */
export function rgbOf(reader: XmlReader): string | undefined {
  const digits = /^(?:[\dA-F]{2})?([\dA-F]{6})$/i.exec(reader.attribute('rgb') ?? '')?.[1];
  return digits && `#${digits.toUpperCase()}`;
}
