import { mergeClasses } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import type { ShopState } from '../shared/shopState.js';
import { copyMaker } from './copyMaker.js';
import { FileCopy } from './FileCopy.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { ValuesHere } from './ValuesHere.js';

/** The two kinds of copy. */
export function CopySection({ workbook, shop }: { workbook: Workbook; shop: ShopState }) {
  const styles = useSectionStyles();
  const maker = copyMaker();
  const way = (kind: 'shop' | 'customer') =>
    maker ? (
      <FileCopy kind={kind} maker={maker} workbook={workbook} />
    ) : (
      <ValuesHere kind={kind} workbook={workbook} shop={shop} />
    );
  return (
    <section className={styles.part} aria-label="Copies">
      <h2 className={styles.heading}>Copies that need no add-in</h2>
      <h3 className={styles.subheading}>For our shop</h3>
      <p className={styles.text}>
        The numbers stay as they are; our formulas become values and can come back.
      </p>
      {way('shop')}
      <h3 className={mergeClasses(styles.subheading, styles.laterSubheading)}>For a customer</h3>
      <p className={styles.text}>
        Values only: no shop sheet, no rates, no formulas, no prompt for an add-in.
      </p>
      {way('customer')}
    </section>
  );
}
