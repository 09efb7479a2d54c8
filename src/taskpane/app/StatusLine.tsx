import { Link, makeStyles, tokens } from '@fluentui/react-components';
import type { CheckedList } from '../shared/checkedLists.js';
import { counted } from '../shared/change/describeStep.js';
import { useNavigation } from '../shared/navigation.js';
import type { ShopState } from '../shared/shopState.js';
import { StartUpNote } from './StartUpNote.js';
import { VerdictMark } from '../shared/VerdictMark.js';

const useStyles = makeStyles({
  line: {
    padding: '8px 12px',
    display: 'grid',
    gap: '2px',
    fontSize: '12px',
    lineHeight: '18px',
    backgroundColor: tokens.colorNeutralBackground3,
  },
  row: { display: 'flex', columnGap: '16px', flexWrap: 'wrap' },
  count: { display: 'inline-flex', gap: '6px' },
  link: { fontSize: '12px', textAlign: 'start' },
});

/** The shop's stamp, the failing rows, and what is stale. */
export function StatusLine({ shop, lists }: { shop: ShopState; lists: readonly CheckedList[] }) {
  const styles = useStyles();
  const sum = (of: (list: CheckedList) => number) => lists.reduce((total, list) => total + of(list), 0);
  const rows = sum((list) => list.rows);
  return (
    <section className={styles.line} aria-label="State of the workbook">
      <div>{stampLine(shop)}</div>
      {rows > 0 && (
        <RowCounts rows={rows} failing={sum((list) => list.failing)} unknown={sum((list) => list.unknown)} />
      )}
      <StartUpNote />
      <Stale shop={shop} errors={sum((list) => list.errors)} />
    </section>
  );
}

/** How many rows fail, and how many are not fully checked: the two are not the same. */
function RowCounts({ rows, failing, unknown }: { rows: number; failing: number; unknown: number }) {
  const styles = useStyles();
  const { open } = useNavigation();
  const known = rows - unknown;
  return (
    <div className={styles.row}>
      <span className={styles.count}>
        <VerdictMark verdict={failing > 0 ? 'Over capacity' : known === 0 ? 'Not checked' : 'OK'} />
        <Link className={styles.link} onClick={() => open('parts', 'list')}>
          {failing > 0
            ? `${ofRows(failing, rows)} ${failing === 1 ? 'fails' : 'fail'}`
            : known === 0
              ? 'No row is fully checked'
              : `${ofRows(known, rows)} ${known === 1 ? 'passes' : 'pass'}`}
        </Link>
      </span>
      {unknown > 0 && known > 0 && (
        <span className={styles.count}>
          <VerdictMark verdict="Not checked" />
          {unknown.toLocaleString('en')} not fully checked
        </span>
      )}
    </div>
  );
}

/** `2 of 3 rows`, `all 3 rows`. */
const ofRows = (some: number, rows: number) =>
  some === rows && rows > 1
    ? `All ${counted(rows, 'row')}`
    : `${some.toLocaleString('en')} of ${counted(rows, 'row')}`;

function stampLine(shop: ShopState): string {
  if (shop.kind === 'ready')
    return `Shop: ${shop.shop.stamp}${shop.keptOn === undefined ? '' : ' (values copy)'}`;
  return shop.kind === 'broken' ? 'Shop: cannot be read' : 'No shop sheet in this workbook yet';
}

function Stale({ shop, errors }: { shop: ShopState; errors: number }) {
  if (shop.kind === 'none' && errors > 0)
    return (
      <div>
        {counted(errors, 'row of a checked list shows', 'rows of checked lists show')} an error, since the
        shop sheet is gone: undo that, or add a shop sheet.
      </div>
    );
  if (shop.kind !== 'ready') return null;
  const { shown } = shop;
  const { stamp, hash } = shop.shop;
  if (shown.includes(hash) || shown === stamp)
    return errors > 0 ? (
      <div>{counted(errors, 'row shows', 'rows show')} an error: press Ctrl+Alt+F9.</div>
    ) : null;
  const old = /[A-Z\d]{4}$/.exec(shown)?.[0];
  return (
    <div>
      {old
        ? `Checked with …${old}; the shop is now …${hash.slice(-4)}.`
        : 'The shop cell is not calculated yet.'}{' '}
      {shop.keptOn === undefined
        ? 'Press Ctrl+Alt+F9 to calculate again.'
        : 'Bring the formulas back (Hand-off) to check again.'}
    </div>
  );
}
