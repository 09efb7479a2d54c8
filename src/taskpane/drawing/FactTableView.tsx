import { mergeClasses } from '@fluentui/react-components';
import type { FactTable } from '../../drawing/drawing.js';
import { WholeSizes } from '../shared/WholeSizes.js';
import { useDrawingStyles } from './drawingStyles.js';

/** Letters; a longer text has room for several words a line. */
const shortText = 24;

interface Props {
  table: FactTable;
  caption: string;
  /** The caption stands above the table already, for those who see it. */
  isNamedAbove?: boolean;
}

/** With more columns than these the rows become blocks in a narrow pane. */
const fewColumns = 4;

/**
 * Facts as a plain table. In a narrow pane its rows stand as blocks, each value behind its heading; one of few columns
 * scrolls inside itself. Roles are named, since blocks are no table to every browser.
 */
export function FactTableView({ table, caption, isNamedAbove = false }: Props) {
  const styles = useDrawingStyles();
  const isWide = table.headings.length > fewColumns;
  const block = (style: string) => (isWide ? style : '');
  return (
    <div className={styles.scroll} tabIndex={0} role="region" aria-label={`${caption}: table`}>
      <table role="table" className={mergeClasses(styles.table, block(styles.blocks))}>
        <caption
          className={mergeClasses(isNamedAbove ? styles.unseen : styles.caption, block(styles.blocks))}
        >
          {caption}
        </caption>
        <thead role="rowgroup" className={block(styles.blockHead)}>
          <tr role="row">
            {table.headings.map((heading) => (
              <th key={heading} role="columnheader" scope="col" className={styles.cell}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup" className={block(styles.blocks)}>
          {table.rows.map((row, at) => (
            <tr key={at} role="row" className={block(styles.blockRow)}>
              {row.map((cell, column) => (
                <td
                  key={column}
                  role="cell"
                  data-heading={table.headings[column]}
                  className={mergeClasses(
                    styles.cell,
                    cell.length > shortText && styles.long,
                    block(styles.blockCell),
                  )}
                >
                  <WholeSizes text={cell} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
