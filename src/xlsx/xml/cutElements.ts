import { XmlReader } from './reader.js';

/** Part of a text to be put in place of another. */
export interface TextEdit {
  start: number;
  end: number;
  text: string;
}

export function applyEdits(xml: string, edits: readonly TextEdit[]): string {
  const sorted = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  let at = 0;
  for (const { start, end, text } of sorted) {
    pieces.push(xml.slice(at, start), text);
    at = end;
  }
  return [...pieces, xml.slice(at)].join('');
}

/** The text without the elements that are unwanted, with everything inside them. */
export function cutElements(xml: string, unwanted: (reader: XmlReader) => boolean): string {
  return applyEdits(xml, elementCuts(xml, unwanted));
}

export function elementCuts(xml: string, unwanted: (reader: XmlReader) => boolean): TextEdit[] {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next()) {
    if (reader.closing || !unwanted(reader)) continue;
    const start = reader.tagStart;
    reader.skipElement();
    edits.push({ start, end: reader.position, text: '' });
  }
  return edits;
}

/** What an attribute takes in its tag: ` name="value"`, with the space before it. */
export function attributeCut(reader: XmlReader, name: string): TextEdit[] {
  const bounds = reader.attributeBounds(name);
  if (!bounds) return [];
  const before = reader.xml.slice(reader.tagStart, bounds.start - 1);
  const start = reader.tagStart + before.search(/\s+[^\s=]+\s*=\s*$/);
  return [{ start, end: bounds.end + 1, text: '' }];
}
