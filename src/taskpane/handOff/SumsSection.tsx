import { Button, Select } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import type { ShopState } from '../shared/shopState.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { PaneField } from '../shared/PaneField.js';
import { partsLists, partsTables } from '../shared/partsLists.js';
import { shortText } from '../shared/shortText.js';
import { useLatest } from '../shared/useLatest.js';
import { useWatch } from '../shared/useShop.js';
import { sumSheet } from './sums/sumSheet.js';

interface Props {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** Sums of a list on a sheet, in formulas of the spreadsheet itself. */
export function SumsSection({ workbook, shop }: Props) {
  const styles = useSectionStyles();
  const propose = usePropose();
  const names = useListNames(workbook, shop);
  const [chosen, setChosen] = useState('');
  const wanted = names.includes(chosen) ? chosen : (names[0] ?? '');
  const making = {
    title: 'Add sums to the workbook',
    make: async () => {
      const lists = await partsLists(workbook, shop, undefined);
      const list = lists.find(({ name }) => name === wanted) ?? lists[0];
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
      {names.length > 1 && (
        <PaneField label="List to add up">
          <Select value={wanted} onChange={(_, { value }) => setChosen(value)}>
            {names.map((name) => (
              <option key={name} value={name}>
                {shortText(name)}
              </option>
            ))}
          </Select>
        </PaneField>
      )}
      <div className={styles.actions}>
        <Button onClick={() => propose(making)}>Add sums to the workbook</Button>
      </div>
    </section>
  );
}

/** The lists of the workbook by name, read again when tables come and go. */
function useListNames(workbook: Workbook, shop: Props['shop']): readonly string[] {
  const [names, setNames] = useState<readonly string[]>([]);
  const read = useLatest(
    async () => (await partsTables(workbook, shop)).map(({ name }) => name),
    (found) => setNames(found),
  );
  useEffect(() => read(), [read, workbook, shop]);
  useWatch(workbook, ({ kind }) => {
    if (kind === 'sheets' || kind === 'moved') read();
  });
  return names;
}
