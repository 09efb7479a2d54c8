import { Button, makeStyles, Text, tokens } from '@fluentui/react-components';
import { isBlank } from '../../../core/quantity/cellValue.js';
import { usePropose } from '../../shared/change/useChange.js';
import { useKept } from '../../shared/useKept.js';
import { shortText } from '../../shared/shortText.js';
import { WholeSizes } from '../../shared/WholeSizes.js';
import type { ShopTable } from '../../shared/shopState.js';
import type { Step } from '../../../workbook/step.js';
import { columnAt, writeCell } from '../sheet/tableCells.js';
import type { ListColumn } from './listColumn.js';
import { RowForm } from './RowForm.js';

const useStyles = makeStyles({
  list: { listStyleType: 'none', margin: 0, padding: 0 },
  row: {
    display: 'flex',
    gap: '8px',
    alignItems: 'center',
    justifyContent: 'space-between',
    padding: '6px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  buttons: { display: 'flex', gap: '6px', flex: 'none' },
});

interface Props {
  /** What a row is, in lower case: `tool`. */
  what: string;
  columns: readonly ListColumn[];
  table: ShopTable | undefined;
  describe: (value: (heading: string) => string) => string;
  problem: (values: readonly string[]) => string | undefined;
  /** The steps that add a row, or why it cannot be added. */
  add: (values: readonly string[]) => Promise<readonly Step[] | string>;
}

/** A list of the shop, row by row, each with its form. */
export function RowList({ what, columns, table, describe, problem, add }: Props) {
  const styles = useStyles();
  const propose = usePropose();
  const { value: open, set: setOpen } = useKept<number | 'new' | undefined>(`open ${what}`, () => undefined);
  const typed = useKept<readonly string[] | undefined>(`typed ${what}`, () => undefined);
  const close = () => {
    typed.set(undefined);
    setOpen(undefined);
  };
  const openForm = (row: number | 'new') => {
    typed.set(undefined);
    setOpen(row);
  };
  const rows = (table?.values ?? []).flatMap((cells, row) =>
    row > 0 && cells.some((cell) => !isBlank(cell)) ? row : [],
  );
  const valuesOf = (row: number) =>
    columns.map(({ heading }) => (table ? String(table.values[row]?.[columnAt(table, heading)] ?? '') : ''));
  const change = (row: number, values: readonly string[], title: string) => {
    const before = valuesOf(row);
    const changed = columns.flatMap(({ heading }, at) => (values[at] === before[at] ? [] : { heading, at }));
    const make = async () => {
      const unwritable = changed.find(({ heading }) => !table || columnAt(table, heading) < 0);
      if (unwritable || !table)
        return `The table has no column ${unwritable?.heading ?? ''}. Add it on the sheet first.`;
      const steps = changed.map(({ heading, at }) =>
        writeCell(table, row, columnAt(table, heading), values[at] ?? ''),
      );
      return { title, steps, written: close };
    };
    propose({ title, make });
  };
  const addRow = (values: readonly string[]) => {
    const title = `Add ${what}`;
    const make = async () => {
      const steps = await add(values);
      return typeof steps === 'string' ? steps : { title, steps, written: close };
    };
    propose({ title, make });
  };
  const form = (title: string, values: readonly string[], onSave: (typed: readonly string[]) => void) => (
    <RowForm
      {...{ title, columns, values, problem, onSave, onCancel: close }}
      typed={typed.value ?? values}
      onTyped={typed.set}
    />
  );
  return (
    <>
      {open === 'new' ? (
        form(
          `New ${what}`,
          columns.map(() => ''),
          addRow,
        )
      ) : (
        <Button appearance="primary" style={{ justifySelf: 'start' }} onClick={() => openForm('new')}>
          New {what}
        </Button>
      )}
      <ul className={styles.list}>
        {rows.map((row) => {
          const values = valuesOf(row);
          const said = shortText(
            describe((heading) => values[columns.findIndex((each) => each.heading === heading)] ?? ''),
            90,
          );
          if (open === row) {
            const save = (typed: readonly string[]) => change(row, typed, `Change ${what}: ${said}`);
            return <li key={row}>{form(`Change ${what}`, values, save)}</li>;
          }
          const remove = () =>
            change(
              row,
              columns.map(() => ''),
              `Remove ${what}: ${said}`,
            );
          return (
            <li key={row} className={styles.row}>
              <Text>
                <WholeSizes text={said} />
              </Text>
              <span className={styles.buttons}>
                <Button size="small" aria-label={`Edit ${said}`} onClick={() => openForm(row)}>
                  Edit
                </Button>
                <Button size="small" aria-label={`Remove ${said}`} onClick={remove}>
                  Remove
                </Button>
              </span>
            </li>
          );
        })}
      </ul>
    </>
  );
}
