import { storedContent, writeCell, type CellChange } from './writeCell.js';
import { XmlElement } from './xml/element.js';

/** A cell as nearly every program writes it: attributes, a formula, a value, and nothing else. */
const usualCell =
  /^<c((?: [a-z]+="[^"<>]*")*)(?:\/>|>(<f(?: [^<>/]*)?(?:\/>|>[^<]*<\/f>))?(<v>[^<]*<\/v>)?<\/c>)$/;
const typeAttribute = / t="[^"]*"/;

/** The text of a cell that the file has, with what it holds changed; all else of it stays. */
export function changedCell(text: string, change: CellChange): string {
  const usual =
    change.ref || change.formula !== undefined || change.replacesFormula ? null : usualCell.exec(text);
  const [, attributes = '', formula = '', value = ''] = usual ?? [];
  if (!usual || (change.value === null && formula + value === '')) {
    const cell = XmlElement.read(text);
    writeCell(cell, change, false);
    return String(cell);
  }
  const { type, content = '' } = storedContent(change.value, 'str');
  const wanted = type === undefined ? '' : ` t="${type}"`;
  const tag = typeAttribute.test(attributes)
    ? `<c${attributes.replace(typeAttribute, wanted)}`
    : `<c${attributes}${wanted}`;
  return formula + content === '' ? `${tag}/>` : `${tag}>${formula}${content}</c>`;
}

/** The text of a cell that the file does not have. */
export function newCell(address: string, value: CellChange['value']): string {
  const { type, content } = storedContent(value, 'str');
  return `<c r="${address}"${type === undefined ? '' : ` t="${type}"`}>${content ?? ''}</c>`;
}
