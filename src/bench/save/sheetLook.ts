import { cellAddress, parseZone, zoneAddress, type Zone } from '../../sheet/address.js';
import type { XmlElement } from '../../xlsx/xml/element.js';
import type { GivenSheet } from '../open/givenSheet.js';
import { ruleId, type RuleRanges } from '../open/ruleRanges.js';
import type { SheetMove } from './moved/sheetMove.js';
import { colorElement } from './styles/addedStyles.js';

/** Stores frozen panes and grid lines, where they were changed. */
export function changeView(
  sheet: XmlElement,
  { frozen: { rows, columns }, gridLines }: GivenSheet,
  given: Pick<GivenSheet, 'frozen' | 'gridLines'>,
): void {
  const repanes = rows !== given.frozen.rows || columns !== given.frozen.columns;
  if (!repanes && gridLines === given.gridLines) return;
  const views = sheet.made('sheetViews', '<sheetViews><sheetView workbookViewId="0"/></sheetViews>');
  const view = views.made('sheetView', '<sheetView workbookViewId="0"/>');
  if (gridLines !== given.gridLines) view.set({ showGridLines: gridLines ? undefined : 0 });
  if (!repanes) return;
  // What was selected is told by panes, too.
  view.keep(({ name }) => name !== 'pane' && name !== 'selection');
  view.put('pane', paneElement(rows, columns));
}

function paneElement(rows: number, columns: number): string | undefined {
  if (rows === 0 && columns === 0) return undefined;
  const across = columns > 0 ? ` xSplit="${columns}"` : '';
  const down = rows > 0 ? ` ySplit="${rows}"` : '';
  const active = rows === 0 ? 'topRight' : columns === 0 ? 'bottomLeft' : 'bottomRight';
  return `<pane${across}${down} topLeftCell="${cellAddress(rows, columns)}" activePane="${active}" state="frozen"/>`;
}

/** The sheet is no longer one of those shown first. */
export function unselect(sheet: XmlElement): void {
  for (const view of sheet.child('sheetViews')?.children ?? []) view.set({ tabSelected: undefined });
}

export function changeTabColor(sheet: XmlElement, color: string | undefined): void {
  if (color || sheet.child('sheetPr')) sheet.made('sheetPr').put('tabColor', colorElement('tabColor', color));
}

/** Stores merged areas, where they were changed. */
export function changeMerges(sheet: XmlElement, now: readonly Zone[]): void {
  const was = new Set(sheet.child('mergeCells')?.children.map((merge) => merge.attribute('ref')));
  const is = now.map(zoneAddress);
  if (was.size === is.length && is.every((address) => was.has(address))) return;
  const inner = is.map((address) => `<mergeCell ref="${address}"/>`).join('');
  sheet.put('mergeCells', inner && `<mergeCells count="${is.length}">${inner}</mergeCells>`);
}

/** Has the color rules be about the cells that they are about in the grid. */
export function changeRules(sheet: XmlElement, now: RuleRanges, given: RuleRanges, move: SheetMove): void {
  let number = 0;
  sheet.keep((formatting) => {
    if (formatting.name !== 'conditionalFormatting') return true;
    const rules = formatting.children.filter(({ name }) => name === 'cfRule');
    const known = rules.filter((rule) => rule.attribute('type') === 'expression');
    const ids = known.map(() => ruleId(number++));
    // Rules the grid does not know, or rules that went different ways, stay where they are.
    if (known.length < rules.length || !ids.some((id) => given.has(id))) return true;
    const ranges = new Set(ids.map((id) => sorted(now.get(id) ?? [])));
    const [sqref = ''] = ranges;
    if (ranges.size > 1 || ids.every((id) => sqref === sorted(moved(given.get(id) ?? [], move)))) return true;
    if (formatting.attribute('sqref') !== undefined) formatting.set({ sqref });
    return sqref !== '';
  });
}

const moved = (ranges: readonly string[], move: SheetMove): string[] =>
  ranges.flatMap((range) => {
    const zone = parseZone(range);
    const left = zone && move.zone(zone);
    return left ? [zoneAddress(left)] : [];
  });

const sorted = (ranges: readonly string[]): string => [...ranges].sort().join(' ');
