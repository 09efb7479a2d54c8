import { Button, Link, Text } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import { cellAddress, cellOf } from '../../../workbook/area.js';
import { useGoTo, usePropose } from '../../shared/change/useChange.js';
import { counted } from '../../shared/change/describeStep.js';
import type { ColumnMatch } from './columnMatch.js';
import { type FailGroup, runsOf } from './failGroups.js';
import { GroupRow } from './GroupRow.js';
import { dateCells, fixDates } from './groupChanges.js';
import type { ListRead } from './listRead.js';
import { markOf } from './markOf.js';
import { PressChoice } from './PressChoice.js';
import { stack } from '../../shared/stack.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  group: FailGroup;
}

/** So much of a reason stands in the heading of its group. */
export const shownOfReason = 160;

/** The rows of a group: one after the other, all that adjoin, and one change for all of them. */
export function FailGroupPanel({ shop, list, matches, group }: Props) {
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
  const current = rows[at];
  const shownRow = current ?? rows[0] ?? 0;
  const finding = group.worstOf.get(shownRow);
  return (
    <div style={stack(10)}>
      <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
        {rows.length === 1 ? (
          <Button size="small" onClick={() => step(1)}>
            Go to row
          </Button>
        ) : (
          <>
            <Button size="small" onClick={() => step(1)}>
              Next row
            </Button>
            <Button size="small" disabled={at < 0} onClick={() => step(-1)}>
              Previous row
            </Button>
          </>
        )}
        {here && here.count > 1 && (
          <Button size="small" onClick={() => goTo(here.row, here.count)}>
            Select {here.count === rows.length ? `all ${here.count}` : `${here.count} that adjoin`}
          </Button>
        )}
        <Text role="status">
          {current === undefined ? '' : rowTitle(list, matches, current, at, rows.length)}
        </Text>
      </div>
      {finding && <GroupRow {...{ shop, list, matches, rows, finding }} row={shownRow} told={group.reason} />}
      {group.verdict === 'Check input' && <DateFix {...{ shop, list, matches, group }} />}
      {group.verdict !== 'Check input' && group.verdict !== 'No part' && (
        <PressChoice {...{ shop, list, matches, rows }} />
      )}
    </div>
  );
}

/** So many dates that are not certain are named with what they may be. */
const namedDates = 8;

/** One change for all dates of the list, beside a group that has one; what it leaves is said. */
function DateFix({ shop, list, matches, group: { rows } }: Props) {
  const propose = usePropose();
  const goTo = useGoTo();
  const cells = useMemo(() => dateCells(list, matches, shop.unit), [list, matches, shop.unit]);
  const inGroup = new Set(rows);
  if (!cells.some(({ row }) => inGroup.has(row))) return null;
  const certain = cells.filter(({ readings }) => readings.length === 1).length;
  const left = cells.filter(({ readings }) => readings.length !== 1);
  return (
    <>
      {certain > 0 && (
        <Button style={{ justifySelf: 'start' }} onClick={() => propose(fixDates(list, cells))}>
          Fix {counted(certain, 'date')}
        </Button>
      )}
      {left.length > 0 && (
        <div>
          <Text>
            {counted(left.length, certain > 0 ? 'more date' : 'date')} may be one of several sizes, or none:
            type {left.length === 1 ? 'it' : 'them'} again as text.
          </Text>
          <ul style={{ margin: '4px 0 0', paddingInlineStart: 20 }}>
            {left.slice(0, namedDates).map((cell) => (
              <li key={`${cell.row} ${cell.column}`}>
                <Link as="button" onClick={() => goTo(cellOf(list.area, cell.row + 1, cell.column))}>
                  {cellAddress(cellOf(list.area, cell.row + 1, cell.column))}
                </Link>
                , {cell.date}:{' '}
                {cell.readings.length === 0 ? 'no size turns into it' : cell.readings.join(' or ')}
              </li>
            ))}
            {left.length > namedDates && <li>and {left.length - namedDates} more</li>}
          </ul>
        </div>
      )}
    </>
  );
}

function rowTitle(
  list: ListRead,
  matches: readonly ColumnMatch[],
  row: number,
  at: number,
  of: number,
): string {
  const mark = markOf(list, matches, row);
  return `${at + 1} of ${of}: row ${list.area.row + row + 2}${mark === '' ? '' : `, mark ${mark}`}`;
}
