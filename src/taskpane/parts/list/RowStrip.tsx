import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { type KeyboardEvent, useMemo, useState } from 'react';
import { verdictKind } from '../../../core/check/verdict.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import { useGoTo } from '../../shared/change/useChange.js';
import { VerdictMark } from '../../shared/VerdictMark.js';
import type { ColumnMatch } from './columnMatch.js';
import type { ListRead } from './listRead.js';
import { markOf } from './markOf.js';
import { stripOf } from './rowStrip.js';

const cellSize = '24px';

const useStyles = makeStyles({
  strip: { display: 'flex', flexWrap: 'wrap', maxHeight: '144px', overflowY: 'auto' },
  cell: {
    width: cellSize,
    height: cellSize,
    display: 'flex',
    justifyContent: 'center',
    padding: '1px 0 0',
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground2,
    cursor: 'pointer',
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: '-2px' },
  },
  wrong: { color: tokens.colorNeutralForeground1, backgroundColor: tokens.colorNeutralBackground3 },
});

interface Props {
  list: ListRead;
  matches: readonly ColumnMatch[];
  results: readonly RowResult[];
}

/** All rows in their order, a mark each; one stop of the tab order, the arrow keys go on inside. */
export function RowStrip({ list, matches, results }: Props) {
  const styles = useStyles();
  const goTo = useGoTo();
  const cells = useMemo(() => stripOf(results), [results]);
  const [at, setAt] = useState(0);
  const move = (event: KeyboardEvent<HTMLDivElement>) => {
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = Math.max(0, Math.min(at + by, cells.length - 1));
    setAt(next);
    event.currentTarget.querySelectorAll('button')[next]?.focus();
  };
  if (cells.length === 0) return null;
  return (
    <div role="toolbar" aria-label="All rows in their order" className={styles.strip} onKeyDown={move}>
      {cells.map(({ row, rows, verdict }, each) => {
        const where = `row ${list.area.row + row + 2}`;
        const mark = markOf(list, matches, row);
        const name = `${mark === '' ? where : `${mark}, ${where}`}: ${verdict}`;
        const label = rows === 1 ? name : `${name}, the worst of ${rows} rows`;
        const kind = verdictKind(verdict);
        return (
          <button
            key={row}
            type="button"
            tabIndex={each === Math.min(at, cells.length - 1) ? 0 : -1}
            title={label}
            aria-label={label}
            className={mergeClasses(styles.cell, (kind === 'fails' || kind === 'unknown') && styles.wrong)}
            onClick={() => {
              setAt(each);
              goTo({ ...list.area, row: list.area.row + 1 + row, rows: 1 });
            }}
          >
            <VerdictMark verdict={verdict} />
          </button>
        );
      })}
    </div>
  );
}
