import { Button, Checkbox, Text } from '@fluentui/react-components';
import type { RowItem } from '../../../core/row/rowItem.js';
import type { Workbook } from '../../../workbook/port.js';
import { usePropose } from '../../shared/change/useChange.js';
import { useNavigation } from '../../shared/navigation.js';
import type { ShopState } from '../../shared/shopState.js';
import { stack } from '../../shared/stack.js';
import { useKept } from '../../shared/useKept.js';
import { addChecks } from './addChecks.js';
import { addColumns, itemsToAdd } from './addColumns.js';
import { furtherItems } from './checkColumn.js';
import type { ColumnMatch } from './columnMatch.js';
import type { ListRead } from './listRead.js';

interface Props {
  workbook: Workbook;
  state: ShopState;
  list: ListRead;
  matches: readonly ColumnMatch[];
}

/** The way to have the checks on the sheet, with the columns that are asked for; it needs the shop there. */
export function AddCheckColumns({ workbook, state, list, matches }: Props) {
  const propose = usePropose();
  const { open } = useNavigation();
  const { value: chosen, set: choose } = useKept<readonly RowItem[]>('more columns', () => []);
  if (state.kind !== 'ready')
    return (
      <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
        <Text>To have the checks on the sheet, the workbook needs a shop sheet.</Text>
        <Button onClick={() => open('shop')}>Go to Shop</Button>
      </div>
    );
  const title = 'Add check columns';
  const add = () => propose({ title, make: () => addChecks(workbook, list, matches, chosen) });
  return (
    <div style={stack(8)}>
      <MoreColumns
        title={`Columns: verdict, share of rating, note${chosen.length === 0 ? '' : `, and ${chosen.length} more`}`}
        items={furtherItems}
        {...{ chosen, choose }}
      />
      <Button appearance="primary" style={{ justifySelf: 'start' }} onClick={add}>
        {title}
      </Button>
    </div>
  );
}

/** The way to give a list that is checked on the sheet more columns. */
export function AddFurtherColumns({ workbook, list, matches }: Omit<Props, 'state'>) {
  const propose = usePropose();
  const { value: chosen, set: choose } = useKept<readonly RowItem[]>('further columns', () => []);
  const items = list.checks && list.source.table ? itemsToAdd(list.checks) : [];
  const wanted = chosen.filter((each) => items.some(({ item }) => item === each));
  if (items.length === 0) return null;
  const title = wanted.length === 1 ? 'Add 1 column' : `Add ${wanted.length} columns`;
  const add = () => propose({ title, make: () => addColumns(workbook, list, matches, wanted) });
  return (
    <div style={stack(8)}>
      <MoreColumns title="More columns" {...{ items, chosen: wanted, choose }} />
      {wanted.length > 0 && (
        <Button style={{ justifySelf: 'start' }} onClick={add}>
          {title}
        </Button>
      )}
    </div>
  );
}

interface MoreColumnsProps {
  title: string;
  items: typeof furtherItems;
  chosen: readonly RowItem[];
  choose: (items: readonly RowItem[]) => void;
}

/** Columns that a list can have, each to be ticked. */
function MoreColumns({ title, items, chosen, choose }: MoreColumnsProps) {
  return (
    <details>
      <summary style={{ cursor: 'pointer', padding: '4px 0' }}>{title}</summary>
      <div role="group" aria-label="More columns" style={{ display: 'grid' }}>
        {items.map(({ item, heading, meaning }) => (
          <Checkbox
            key={item}
            label={
              <>
                {heading}: {meaning}
              </>
            }
            checked={chosen.includes(item)}
            onChange={(_, { checked }) =>
              choose(checked === true ? [...chosen, item] : chosen.filter((each) => each !== item))
            }
          />
        ))}
      </div>
    </details>
  );
}
