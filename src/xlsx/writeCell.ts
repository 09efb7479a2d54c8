import { zoneAddress, type Zone } from '../sheet/address.js';
import { isCellError, storedErrorCode, type StoredValue } from '../sheet/cellValue.js';
import { encodeString } from './xml/text.js';
import type { XmlElement } from './xml/element.js';

/** What a cell is to hold. */
export interface CellChange {
  row: number;
  column: number;
  value: StoredValue;
  /** A formula that comes, as files store it; without one, that which is there stays. */
  formula?: string;
  /** The cells that its formula fills. */
  ref?: Zone | undefined;
  /** The caller replaced the cell's content, so a formula in it goes. */
  replacesFormula?: boolean;
}

/** Changes what a cell holds, and keeps everything else of it. */
export function writeCell(
  cell: XmlElement,
  { value, formula, ref, replacesFormula = formula !== undefined }: CellChange,
  isNew: boolean,
): void {
  const isText = replacesFormula && formula === undefined && !isNew;
  const { type, content } = storedContent(value, isText ? 'inlineStr' : 'str');
  cell.keep(({ name }) => name !== 'v' && name !== 'is' && !(name === 'f' && replacesFormula));
  cell.set({ t: type });
  const range = ref && zoneAddress(ref);
  const known = cell.child('f');
  if (formula !== undefined)
    cell.put('f', `<f${range ? ` t="array" ref="${range}"` : ''}>${encodeString(formula)}</f>`);
  else if (range && known?.attribute('ref') !== undefined) known.set({ ref: range });
  cell.put(type === 'inlineStr' ? 'is' : 'v', content);
}

/** The `t` attribute and the value element for a value; strings of formulas are `str`. */
export function storedContent(
  value: StoredValue,
  textType: 'str' | 'inlineStr',
): { type: string | undefined; content: string | undefined } {
  const element = (text: string) => `<v>${text}</v>`;
  if (value === null) return { type: undefined, content: undefined };
  if (typeof value === 'number') return { type: undefined, content: element(String(value)) };
  if (typeof value === 'boolean') return { type: 'b', content: element(value ? '1' : '0') };
  if (isCellError(value)) return { type: 'e', content: element(encodeString(storedErrorCode(value.error))) };
  const text = encodeString(value);
  if (textType === 'str') return { type: textType, content: element(text) };
  const space = /^\s|\s$|\n/.test(value) ? ' xml:space="preserve"' : '';
  return { type: textType, content: `<is><t${space}>${text}</t></is>` };
}
