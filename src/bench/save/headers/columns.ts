import { XmlReader } from '../../../xlsx/xml/reader.js';
import { childElements, withChild, withPrefix } from '../parts/childElements.js';
import { withAttribute } from '../parts/cellMarks.js';
import type { HeaderMap } from './headerMap.js';
import { sheetOrder } from '../parts/sheetOrder.js';

interface ColumnSpan {
  first: number;
  last: number;
  element: string;
}

/** What changes of a column: its width in characters, and whether it is hidden. */
export interface ColumnChange {
  width?: number;
  hidden?: boolean;
}

/** The columns element where its columns are now; empty where none is left. */
export function movedColumns(element: string, columns: HeaderMap): string {
  const spans = readSpans(element).flatMap((span) => {
    const left = columns.span(span.first, span.last);
    if (!left) return [];
    // New columns in between are told by themselves.
    const kept: ColumnSpan[] = [];
    for (let at = left.first; at <= left.last; at++) {
      const isKept = at >= left.last || columns.origin(at) !== undefined;
      const previous = kept[kept.length - 1];
      if (!isKept) continue;
      if (previous && previous.last === at - 1) previous.last = at;
      else kept.push({ ...span, first: at, last: at });
    }
    return kept;
  });
  return written(element, spans);
}

/** A sheet's part with columns changed; the others keep what they have. */
export function withColumns(xml: string, changes: ReadonlyMap<number, ColumnChange>): string {
  if (changes.size === 0) return xml;
  const cols = childElements(xml).find(({ name }) => name === 'cols');
  const prefix = rootPrefix(xml);
  const element = cols?.text ?? withPrefix('<cols></cols>', prefix);
  let spans = readSpans(element);
  for (const [column, change] of changes) spans = changed(spans, column, change, prefix);
  const text = written(element, spans);
  return cols
    ? xml.slice(0, cols.start) + text + xml.slice(cols.end)
    : withChild(xml, 'cols', text, sheetOrder);
}

function changed(spans: ColumnSpan[], column: number, change: ColumnChange, prefix: string): ColumnSpan[] {
  const at = spans.findIndex(({ first, last }) => column >= first && column <= last);
  const span = spans[at];
  const element = withChange(span?.element ?? withPrefix('<col min="1" max="1"/>', prefix), change);
  const alone = { first: column, last: column, element };
  if (!span) return [...spans, alone].sort((a, b) => a.first - b.first);
  const around = [{ ...span, last: column - 1 }, alone, { ...span, first: column + 1 }].filter(
    ({ first, last }) => first <= last,
  );
  return [...spans.slice(0, at), ...around, ...spans.slice(at + 1)];
}

function withChange(element: string, { width, hidden }: ColumnChange): string {
  let out = element;
  if (width !== undefined)
    out = withAttribute(withAttribute(out, 'width', String(width)), 'customWidth', '1');
  if (hidden !== undefined) out = withAttribute(out, 'hidden', hidden ? '1' : undefined);
  const reader = new XmlReader(out);
  reader.next();
  // A hidden column without a width has none when it is shown again.
  return reader.attribute('width') === undefined ? withAttribute(out, 'width', '8.43') : out;
}

function readSpans(element: string): ColumnSpan[] {
  return childElements(element).map(({ text }) => {
    const reader = new XmlReader(text);
    reader.next();
    const number = (name: string) => Number(reader.attribute(name) ?? 1) - 1;
    return { first: number('min'), last: number('max'), element: text };
  });
}

function written(element: string, spans: readonly ColumnSpan[]): string {
  if (spans.length === 0) return '';
  const reader = new XmlReader(element);
  reader.next();
  const inner = spans
    .map(({ first, last, element: text }) =>
      withAttribute(withAttribute(text, 'max', String(last + 1)), 'min', String(first + 1)),
    )
    .join('');
  return `<${reader.prefix}cols>${inner}</${reader.prefix}cols>`;
}

function rootPrefix(xml: string): string {
  const reader = new XmlReader(xml);
  reader.next();
  return reader.prefix;
}
