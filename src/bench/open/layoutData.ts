import type { Worksheet } from '../../xlsx/storedCells.js';
import { readLayout } from './layout.js';
import { ruleId } from './ruleRanges.js';
import type { Styles } from './styles.js';

const pixelsPerCharacter = 7.5;
const spareWidth = 5;

export const columnPixels = (characters: number) => Math.round(characters * pixelsPerCharacter + spareWidth);
export const columnCharacters = (pixels: number) => (pixels - spareWidth) / pixelsPerCharacter;
export const rowPixels = (points: number) => Math.round((points * 4) / 3);
export const rowPoints = (pixels: number) => (pixels * 3) / 4;

/** The engine's form of what a sheet shows besides its cells. */
export function layoutData(
  cells: Worksheet,
  { differences }: Styles,
  size: { rows: number; columns: number },
): Record<string, unknown> {
  const layout = readLayout(cells.xml);
  const cols: Record<number, { size?: number; isHidden?: boolean }> = {};
  for (const { first, last, width, hidden } of layout.columns) {
    // A width may be given for all columns to the end of the sheet.
    for (let column = first; column <= Math.min(last, size.columns - 1); column++)
      cols[column] = {
        ...(width !== undefined && { size: columnPixels(width) }),
        isHidden: hidden,
      };
  }
  const rows: Record<number, { size?: number; isHidden?: boolean }> = {};
  for (const row of cells.hiddenRows) if (row < size.rows) rows[row] = { isHidden: true };
  for (const [row, points] of layout.heights)
    if (row < size.rows) rows[row] = { ...rows[row], size: rowPixels(points) };
  const { frozen, gridLines, color } = layout;
  return {
    cols,
    rows,
    areGridLinesVisible: gridLines,
    ...(color && { color }),
    panes: { xSplit: frozen.columns, ySplit: frozen.rows },
    conditionalFormats: layout.rules.flatMap((rule, at) => {
      const style = differences[rule.difference];
      if (!style) return [];
      const { textColor, fillColor, bold } = style;
      return {
        id: ruleId(at),
        ranges: rule.ranges,
        stopIfTrue: rule.stops,
        rule: {
          type: 'CellIsRule',
          operator: 'customFormula',
          values: [`=${rule.formula}`],
          style: { ...(textColor && { textColor }), ...(fillColor && { fillColor }), ...(bold && { bold }) },
        },
      };
    }),
  };
}
