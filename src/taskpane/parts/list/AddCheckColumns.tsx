import { Button, Checkbox, Text } from '@fluentui/react-components';
import type { RowItem } from '../../../core/row/rowItem.js';
import type { Workbook } from '../../../workbook/port.js';
import { usePropose } from '../../shared/change/useChange.js';
import { useNavigation } from '../../shared/navigation.js';
import type { ShopState } from '../../shared/shopState.js';
import { stack } from '../../shared/stack.js';
import { useKept } from '../../shared/useKept.js';
import { addChecks } from './addChecks.js';
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
        <Button onClick={() => open('shop')}>To the shop</Button>
      </div>
    );
  const title = 'Add check columns';
  const add = () => propose({ title, make: () => addChecks(workbook, list, matches, chosen) });
  return (
    <div style={stack(8)}>
      <MoreColumns chosen={chosen} onChoose={choose} />
      <Button appearance="primary" style={{ justifySelf: 'start' }} onClick={add}>
        {title}
      </Button>
    </div>
  );
}

interface MoreColumnsProps {
  chosen: readonly RowItem[];
  onChoose: (items: readonly RowItem[]) => void;
}

/** What the list can have beside verdict, share of rating and note. */
function MoreColumns({ chosen, onChoose }: MoreColumnsProps) {
  const more = chosen.length === 0 ? '' : `, and ${chosen.length} more`;
  return (
    <details>
      <summary style={{ cursor: 'pointer', padding: '4px 0' }}>
        Columns: verdict, share of rating, note{more}
      </summary>
      <div role="group" aria-label="More columns" style={{ display: 'grid' }}>
        {furtherItems.map(({ item, heading, meaning }) => (
          <Checkbox
            key={item}
            label={
              <>
                {heading}: {meaning}
              </>
            }
            checked={chosen.includes(item)}
            onChange={(_, { checked }) =>
              onChoose(checked === true ? [...chosen, item] : chosen.filter((each) => each !== item))
            }
          />
        ))}
      </div>
    </details>
  );
}
