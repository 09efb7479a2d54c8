import { Button } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import type { ShopState } from '../shared/shopState.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { partsLists } from '../shared/partsLists.js';
import { sumSheet } from './sums/sumSheet.js';

interface Props {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** Sums of a list on a sheet, in formulas of the spreadsheet itself. */
export function SumsSection({ workbook, shop }: Props) {
  const styles = useSectionStyles();
  const propose = usePropose();
  const making = {
    title: 'Add sums to the workbook',
    make: async () => {
      const lists = await partsLists(workbook, shop, undefined);
      const [list] = lists;
      if (!list) return 'There is no list of parts to add up. Make the list a table with a Section column.';
      return sumSheet(
        list,
        (await workbook.sheets()).map(({ name }) => name),
      );
    },
  };
  return (
    <section className={styles.part} aria-label="Sums">
      <h2 className={styles.heading}>Sums</h2>
      <p className={styles.text}>
        A new sheet adds up pieces, mass and paint area by section, grade, press and verdict. Its formulas
        need no add-in.
      </p>
      <div className={styles.actions}>
        <Button onClick={() => propose(making)}>Add sums to the workbook</Button>
      </div>
    </section>
  );
}
