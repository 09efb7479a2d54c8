import { zoneAddress, type Zone } from '../sheet/address.js';
import { isCellError, storedErrorCode, type StoredValue } from '../sheet/cellValue.js';
import { encodeString } from './xml/text.js';
import { XmlReader } from './xml/reader.js';

/** A cell's new stored value, and the new range of its formula when that changed. */
export interface CellChange {
  row: number;
  column: number;
  value: StoredValue;
  ref?: Zone;
  /** The caller replaced the cell's content, so a formula in it goes. */
  replacesFormula?: boolean;
}

interface Stored {
  type: string;
  content: string;
}

/** The `t` attribute and the value element for a value; strings of formulas are `str`. */
export function storedContent(value: StoredValue, prefix: string, hasFormula: boolean): Stored {
  const element = (text: string) => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return { type: '', content: '' };
  if (typeof value === 'number') return { type: '', content: element(String(value)) };
  if (typeof value === 'boolean') return { type: 'b', content: element(value ? '1' : '0') };
  if (isCellError(value)) return { type: 'e', content: element(encodeString(storedErrorCode(value.error))) };
  const space = /^\s|\s$|\n/.test(value) ? ' xml:space="preserve"' : '';
  const text = encodeString(value);
  if (hasFormula) return { type: 'str', content: element(text) };
  return {
    type: 'inlineStr',
    content: `<${prefix}is><${prefix}t${space}>${text}</${prefix}t></${prefix}is>`,
  };
}

/** The XML of a cell that the sheet did not have. */
export function newCell(address: string, change: CellChange, prefix: string): string {
  const { type, content } = storedContent(change.value, prefix, true);
  if (content === '') return '';
  return `<${prefix}c r="${address}"${type ? ` t="${type}"` : ''}>${content}</${prefix}c>`;
}

/** The XML of an existing cell with its stored value changed and everything else kept. */
export function changedCell(xml: string, change: CellChange): string {
  const reader = new XmlReader(xml);
  reader.next();
  const prefix = reader.prefix;
  const head = { tagEnd: reader.tagEnd, empty: reader.empty, type: reader.attributeBounds('t') };
  const { formula, rest } = keptChildren(reader, change);
  const { type, content } = storedContent(change.value, prefix, formula !== '' || !change.replacesFormula);
  const attributes = withType(xml, prefix.length + 2, head, type);
  const inner = formula + content + rest;
  return inner === '' ? `<${prefix}c${attributes}/>` : `<${prefix}c${attributes}>${inner}</${prefix}c>`;
}

/** Everything inside a cell except its old value: the formula, then what follows. */
function keptChildren(reader: XmlReader, change: CellChange): { formula: string; rest: string } {
  const kept = { formula: '', rest: '' };
  if (reader.empty) return kept;
  while (reader.next() && !(reader.closing && reader.name === 'c')) {
    const start = reader.tagStart;
    const isFormula = reader.name === 'f';
    const isValue = reader.name === 'v' || reader.name === 'is';
    const bounds = isFormula && change.ref ? reader.attributeBounds('ref') : undefined;
    reader.skipElement();
    if (isValue || (isFormula && change.replacesFormula)) continue;
    const element = reader.xml.slice(start, reader.position);
    if (!isFormula) kept.rest += element;
    else if (bounds && change.ref) {
      const { xml } = reader;
      kept.formula =
        xml.slice(start, bounds.start) + zoneAddress(change.ref) + xml.slice(bounds.end, reader.position);
    } else kept.formula = element;
  }
  return kept;
}

function withType(
  xml: string,
  start: number,
  head: { tagEnd: number; empty: boolean; type: { start: number; end: number } | undefined },
  type: string,
): string {
  const end = head.tagEnd - (head.empty ? 2 : 1);
  const { type: bounds } = head;
  if (!bounds) return xml.slice(start, end).trimEnd() + (type ? ` t="${type}"` : '');
  if (type) return xml.slice(start, bounds.start) + type + xml.slice(bounds.end, end).trimEnd();
  const before = xml.slice(start, bounds.start).replace(/\s+t\s*=\s*["']$/, '');
  return before + xml.slice(bounds.end + 1, end).trimEnd();
}
