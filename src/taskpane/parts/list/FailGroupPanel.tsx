import { Button, Text } from '@fluentui/react-components';
import { useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import { useGoTo, usePropose } from '../../shared/change/useChange.js';
import { counted } from '../../shared/change/describeStep.js';
import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';
import { type FailGroup, runsOf } from './failGroups.js';
import { dateCells, fixDates } from './groupChanges.js';
import type { ListRead } from './listRead.js';
import { PressChoice } from './PressChoice.js';
import { stack } from '../../shared/stack.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  group: FailGroup;
}

/** The rows of a group: one after the other, all that adjoin, and one change for all of them. */
export function FailGroupPanel({ shop, list, matches, group }: Props) {
  const propose = usePropose();
  const [at, setAt] = useState(-1);
  const { rows } = group;
  const goToCells = useGoTo();
  const goTo = (row: number, count: number) =>
    goToCells({ ...list.area, row: list.area.row + 1 + row, rows: count });
  const step = (by: number) => {
    const next = (at + by + rows.length) % rows.length;
    setAt(next);
    goTo(rows[next] ?? 0, 1);
  };
  const runs = runsOf(rows);
  const here = runs.find(
    ({ row, count }) => at < 0 || ((rows[at] ?? 0) >= row && (rows[at] ?? 0) < row + count),
  );
  const dates = dateCells(list, matches, shop.unit).filter(({ row }) => rows.includes(row));
  const current = rows[at];
  return (
    <div style={stack(10)}>
      <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
        <Button size="small" onClick={() => step(1)}>
          Next row
        </Button>
        <Button size="small" disabled={at < 0} onClick={() => step(-1)}>
          Row before
        </Button>
        {here && here.count > 1 && (
          <Button size="small" onClick={() => goTo(here.row, here.count)}>
            Select {here.count === rows.length ? `all ${here.count}` : `${here.count} that adjoin`}
          </Button>
        )}
        <Text role="status">
          {current === undefined ? '' : rowTitle(list, matches, current, at, rows.length)}
        </Text>
      </div>
      {dates.length > 0 ? (
        <Button style={{ justifySelf: 'start' }} onClick={() => propose(fixDates(list, dates))}>
          Fix {counted(dates.length, 'date')}
        </Button>
      ) : (
        group.verdict !== 'Check input' && <PressChoice {...{ shop, list, matches, rows }} />
      )}
    </div>
  );
}

function rowTitle(
  list: ListRead,
  matches: readonly ColumnMatch[],
  row: number,
  at: number,
  of: number,
): string {
  const column = matches.find(({ field }) => field === 'Mark')?.at ?? -1;
  const mark = shortText(String(list.rows[row]?.[column] ?? ''), 30);
  return `${at + 1} of ${of}: row ${list.area.row + row + 2}${mark === '' ? '' : `, ${mark}`}`;
}
