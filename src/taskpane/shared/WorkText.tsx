import { Text } from '@fluentui/react-components';
import { workBasis } from '../../core/say/workBasis.js';
import { workItemQuantity } from '../../core/say/workItemQuantity.js';
import type { RowWorkResult } from '../../core/work/workOnRow.js';
import { shortText } from './shortText.js';
import { costText, minutesText } from './workTexts.js';

/** Minutes, cost and price of a part on one press, and what they stand on; nothing where the part is not made. */
export function WorkText({ work, currency }: { work: RowWorkResult; currency: string }) {
  if (work.is === 'blank' || work.is === 'not made') return null;
  return (
    <>
      {work.is === 'timed' && <Text weight="semibold">{amountsOf(work, currency)}</Text>}
      {work.is === 'timed' ? (
        <details>
          <summary style={{ cursor: 'pointer', padding: '2px 0' }}>What this is based on</summary>
          <Text size={200}>{shortText(workBasis(work), 600)}</Text>
        </details>
      ) : (
        <Text size={200}>{shortText(workBasis(work), 600)}</Text>
      )}
    </>
  );
}

function amountsOf(work: Extract<RowWorkResult, { is: 'timed' }>, currency: string): string {
  const money = (amount: number) => `${costText(amount)} ${currency}`.trim();
  const { cost, price } = work.money.cost ?? {};
  const breaks = String(workItemQuantity(work, 'breaks').value);
  return [
    `${minutesText(work.time.seconds)} min`,
    ...(cost === undefined ? [] : [`cost ${money(cost)}`]),
    ...(price === undefined ? [] : [`price ${money(price)}`]),
    ...(breaks === '' ? [] : [`price each ${breaks}`]),
  ].join(' · ');
}
