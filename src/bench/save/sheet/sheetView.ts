import { cellAddress } from '../../../sheet/address.js';
import type { GivenSheet } from '../../open/givenSheet.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { applyEdits, attributeCut, cutElements, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { childElements, withChild } from '../parts/childElements.js';
import { withAttribute } from '../parts/cellMarks.js';
import { sheetOrder } from '../parts/sheetOrder.js';

type View = Pick<GivenSheet, 'frozen' | 'gridLines'>;

/** A sheet's part with its frozen panes and grid lines, where they were changed. */
export function withView(xml: string, now: View, given: View): string {
  const { rows, columns } = now.frozen;
  const repanes = rows !== given.frozen.rows || columns !== given.frozen.columns;
  if (!repanes && now.gridLines === given.gridLines) return xml;
  const views =
    childElements(xml).find(({ name }) => name === 'sheetViews')?.text ??
    '<sheetViews><sheetView workbookViewId="0"/></sheetViews>';
  const [first] = childElements(views);
  if (!first) return xml;
  let view = first.text;
  if (now.gridLines !== given.gridLines)
    view = withOpenTag(view, (tag) => withAttribute(tag, 'showGridLines', now.gridLines ? undefined : '0'));
  if (repanes) {
    // What was selected is told by panes, too.
    const bare = cutElements(view, ({ name }) => name === 'pane' || name === 'selection');
    view = withChild(bare, 'pane', paneElement(rows, columns), [
      'pane',
      'selection',
      'pivotSelection',
      'extLst',
    ]);
  }
  const changed = views.slice(0, first.start) + view + views.slice(first.end);
  return withChild(xml, 'sheetViews', changed, sheetOrder);
}

/** A sheet's part that is no longer the one shown first. */
export function withUnselected(xml: string): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  while (reader.next() && reader.name !== 'sheetData')
    if (!reader.closing && reader.name === 'sheetView') edits.push(...attributeCut(reader, 'tabSelected'));
  return applyEdits(xml, edits);
}

function paneElement(rows: number, columns: number): string | undefined {
  if (rows === 0 && columns === 0) return undefined;
  const across = columns > 0 ? ` xSplit="${columns}"` : '';
  const down = rows > 0 ? ` ySplit="${rows}"` : '';
  const active = rows === 0 ? 'topRight' : columns === 0 ? 'bottomLeft' : 'bottomRight';
  return `<pane${across}${down} topLeftCell="${cellAddress(rows, columns)}" activePane="${active}" state="frozen"/>`;
}

function withOpenTag(element: string, change: (tag: string) => string): string {
  const reader = new XmlReader(element);
  reader.next();
  return change(element.slice(0, reader.tagEnd)) + element.slice(reader.tagEnd);
}
