import { Button, Spinner, Text } from '@fluentui/react-components';
import { useMemo } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { useNavigation } from '../shared/navigation.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import type { ShopState } from '../shared/shopState.js';
import { useKept } from '../shared/useKept.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { type StockChoice, firstChoice, jobsOf } from './jobsOf.js';
import { LengthsStep } from './LengthsStep.js';
import { PlanStep } from './PlanStep.js';
import { RowsStep } from './RowsStep.js';
import { useListRows } from './useListRows.js';
import { useStockSource } from './useStockSource.js';

/** The place where bars are planned: which to buy, and what to cut from each. */
export default function StockPlace({ workbook, shop }: { workbook: Workbook; shop: ShopState }) {
  const styles = useSectionStyles();
  return (
    <div className={styles.place}>
      <Text>
        Which bars to buy for a parts list, and what to cut from each. The plan buys as little as it can, and
        says whether any plan could do better. Nothing is written until you say yes. Plates are not planned.
      </Text>
      {shop.kind === 'ready' ? (
        <PlanBars workbook={workbook} shop={shop} />
      ) : (
        <NoShop isBroken={shop.kind === 'broken'} />
      )}
    </div>
  );
}

function NoShop({ isBroken }: { isBroken: boolean }) {
  const styles = useSectionStyles();
  const { open } = useNavigation();
  return (
    <>
      <Text>
        {isBroken
          ? 'The shop cannot be read, so there is nothing to plan with.'
          : 'This workbook has no shop sheet yet. It keeps bar lengths, kerfs and presses.'}
      </Text>
      <div className={styles.actions}>
        <Button appearance="primary" onClick={() => open('shop')}>
          To the shop
        </Button>
      </div>
    </>
  );
}

function PlanBars({ workbook, shop }: { workbook: Workbook; shop: ReadyShop }) {
  const source = useStockSource(workbook, shop);
  const { value: choice, set: choose } = useKept<StockChoice>('stock choice', () => firstChoice);
  const rows = useListRows(source, choice.list, shop.shop);
  const jobs = useMemo(
    () => rows && ('problem' in rows ? rows : jobsOf(rows, source?.stock, choice, shop.shop)),
    [rows, source?.stock, choice, shop.shop],
  );
  if (!source) return <Spinner label="Looking for lists" />;
  if (source.lists.length === 0)
    return (
      <Text>
        There is no parts list yet: make the list a table, with columns Section, Grade, Length and Qty. In
        Parts, Add check columns makes it one.
      </Text>
    );
  if (!jobs) return <Spinner label="Checking the rows" />;
  return (
    <>
      <RowsStep {...{ source, choice, choose, jobs }} />
      {!('problem' in jobs) && jobs.jobs.length > 0 && (
        <>
          <LengthsStep {...{ workbook, shop, source, choice, choose, jobs }} />
          <PlanStep {...{ workbook, shop, jobs }} />
        </>
      )}
    </>
  );
}
