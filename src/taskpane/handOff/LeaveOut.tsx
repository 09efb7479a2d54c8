import { Checkbox } from '@fluentui/react-components';
import { type RowItem, rowItems } from '../../core/row/rowItem.js';
import { useSectionStyles } from '../shared/sectionStyles.js';

/** What a customer's copy may leave out of what the checks show. */
const choices: readonly { label: string; items: readonly RowItem[] }[] = [
  { label: 'Verdicts', items: ['verdict'] },
  { label: 'Notes, reasons and open points', items: ['note', 'governs', 'open'] },
  { label: 'Shares of rating, forces and hits', items: ['use', 'force', 'hits'] },
  { label: 'Presses and routes', items: ['press', 'route'] },
  { label: 'Minutes, cost and their basis', items: ['minutes', 'cost', 'basis'] },
  { label: 'Prices', items: ['price', 'breaks'] },
];

const all = 'All check columns';

/** The items of the ticked boxes. */
export function itemsOf(ticked: readonly string[]): RowItem[] {
  if (ticked.includes(all)) return rowItems.map(({ item }) => item);
  return choices.flatMap(({ label, items }) => (ticked.includes(label) ? items : []));
}

interface Input {
  ticked: readonly string[];
  set: (ticked: readonly string[]) => void;
}

/** Tick boxes for what a customer is not to read. */
export function LeaveOut({ ticked, set }: Input) {
  const styles = useSectionStyles();
  const box = (label: string, isOf: boolean) => (
    <Checkbox
      key={label}
      label={label}
      checked={ticked.includes(label) || (isOf && ticked.includes(all))}
      disabled={isOf && ticked.includes(all)}
      onChange={(_, { checked }) =>
        set(checked === true ? [...ticked, label] : ticked.filter((each) => each !== label))
      }
    />
  );
  return (
    <fieldset className={styles.preview}>
      <legend className={styles.subheading}>Leave out</legend>
      {[box(all, false), ...choices.map(({ label }) => box(label, true))]}
    </fieldset>
  );
}
