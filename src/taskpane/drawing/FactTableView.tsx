import { mergeClasses } from '@fluentui/react-components';
import type { FactTable } from '../../drawing/drawing.js';
import { useDrawingStyles } from './drawingStyles.js';

/** Letters; a longer text has room for several words a line. */
const shortText = 24;

interface Props {
  table: FactTable;
  caption: string;
  /** The caption stands above the table already, for those who see it. */
  isNamedAbove?: boolean;
}

/** Facts as a plain table that scrolls inside itself when the pane is narrow. */
export function FactTableView({ table, caption, isNamedAbove = false }: Props) {
  const styles = useDrawingStyles();
  return (
    <div className={styles.scroll} tabIndex={0} role="region" aria-label={`${caption}: table`}>
      <table className={styles.table}>
        <caption className={isNamedAbove ? styles.unseen : styles.caption}>{caption}</caption>
        <thead>
          <tr>
            {table.headings.map((heading) => (
              <th key={heading} scope="col" className={styles.cell}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, at) => (
            <tr key={at}>
              {row.map((cell, column) => (
                <td
                  key={column}
                  className={mergeClasses(styles.cell, cell.length > shortText && styles.long)}
                >
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
