import { Button, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import type { Area } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import type { CheckedList } from '../shared/checkedLists.js';
import { useGoTo } from '../shared/change/useChange.js';
import { counted } from '../shared/change/describeStep.js';
import { shortText } from '../shared/shortText.js';
import type { ShopState } from '../shared/shopState.js';
import { useWaitingRows } from './useWaitingRows.js';

interface Props {
  workbook: Workbook;
  shop: ShopState;
  lists: readonly CheckedList[];
}

/** One banner for the first cell of the shop that cannot be read, however many rows wait on it. */
export function ShopBanner({ workbook, shop, lists }: Props) {
  const goTo = useGoTo();
  const waiting = useWaitingRows(workbook, shop, lists);
  const broken = firstProblem(shop);
  if (!broken) return null;
  const { message, area, more } = broken;
  return (
    <MessageBar intent="error" layout="multiline">
      <MessageBarBody>
        {shortText(message, 300)}
        {waiting > 0 && ` ${counted(waiting, 'row needs', 'rows need')} this value.`}
        {more > 0 && ` ${counted(more, 'more cell')} of the shop cannot be read.`}
      </MessageBarBody>
      {area && (
        <MessageBarActions>
          <Button size="small" onClick={() => goTo(area)}>
            Go to cell
          </Button>
        </MessageBarActions>
      )}
    </MessageBar>
  );
}

function firstProblem(
  shop: ShopState,
): { message: string; area?: Area | undefined; more: number } | undefined {
  if (shop.kind === 'broken') return { message: shop.message, area: shop.area, more: 0 };
  if (shop.kind !== 'ready') return undefined;
  const [first] = shop.problems;
  return first && { ...first, more: shop.problems.length - 1 };
}
