import { Spinner } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import type { ShopState } from '../shared/shopState.js';
import { BackSection } from './BackSection.js';
import { CopySection } from './CopySection.js';
import { CardsSection } from './CardsSection.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { ReportSection } from './ReportSection.js';
import { SumsSection } from './SumsSection.js';

export interface HandOffProps {
  workbook: Workbook;
  shop: ShopState;
}

/** Copies for others, formulas brought back, the stamp, the report, sums, the cards. */
export default function HandOff({ workbook, shop }: HandOffProps) {
  const styles = useSectionStyles();
  if (shop.kind === 'loading') return <Spinner label="Reading the shop" />;
  return (
    <div className={styles.place}>
      <BackSection workbook={workbook} />
      <Stamp shop={shop} />
      <CopySection workbook={workbook} shop={shop} />
      {shop.kind === 'ready' && <ReportSection workbook={workbook} shop={shop} />}
      {shop.kind === 'ready' && <SumsSection workbook={workbook} shop={shop} />}
      {shop.kind === 'ready' && <CardsSection workbook={workbook} shop={shop} />}
    </div>
  );
}

function Stamp({ shop }: { shop: Exclude<ShopState, { kind: 'loading' }> }) {
  const styles = useSectionStyles();
  return (
    <section className={styles.part} aria-label="Stamp">
      <h2 className={styles.heading}>Stamp</h2>
      <p className={styles.text}>{stampText(shop)}</p>
    </section>
  );
}

function stampText(shop: Exclude<ShopState, { kind: 'loading' }>): string {
  if (shop.kind === 'none')
    return 'This workbook has no shop sheet, so there is no stamp and nothing to report.';
  if (shop.kind === 'broken') return `The shop cannot be read, so there is no stamp: ${shop.message}`;
  const { stamp } = shop.shop;
  if (shop.shown === stamp) return `${stamp}. Whoever has the same stamp has the same numbers.`;
  return `The shop is now ${stamp}; the sheet still shows results of ${shop.shown}. Calculate the workbook before handing it on.`;
}
