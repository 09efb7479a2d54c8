import { Link, makeStyles, tokens } from '@fluentui/react-components';
import type { CheckedList } from '../shared/checkedLists.js';
import { counted } from '../shared/change/describeStep.js';
import { useNavigation } from '../shared/navigation.js';
import type { ShopState } from '../shared/shopState.js';
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
  row: { display: 'flex', gap: '6px', alignItems: 'center', flexWrap: 'wrap' },
});

/** The shop's stamp, the failing rows, and what is stale. */
export function StatusLine({ shop, lists }: { shop: ShopState; lists: readonly CheckedList[] }) {
  const styles = useStyles();
  const { open } = useNavigation();
  const failing = lists.reduce((sum, list) => sum + list.failing, 0);
  const rows = lists.reduce((sum, list) => sum + list.rows, 0);
  const errors = lists.reduce((sum, list) => sum + list.errors, 0);
  return (
    <section className={styles.line} aria-label="State of the workbook">
      <div>{stampLine(shop)}</div>
      {rows > 0 && (
        <div className={styles.row}>
          <VerdictMark verdict={failing > 0 ? 'Over capacity' : 'OK'} />
          {failing === 0 ? (
            <span>{counted(rows, 'row')} checked, none fails</span>
          ) : (
            <Link style={{ fontSize: 12 }} onClick={() => open('parts', 'list')}>
              {failing.toLocaleString('en')} of {counted(rows, 'row')} fail
            </Link>
          )}
        </div>
      )}
      <Stale shop={shop} errors={errors} />
    </section>
  );
}

function stampLine(shop: ShopState): string {
  if (shop.kind === 'ready') return `Shop: ${shop.shop.stamp}`;
  return shop.kind === 'broken' ? 'Shop: cannot be read' : 'No shop sheet in this workbook yet';
}

function Stale({ shop, errors }: { shop: ShopState; errors: number }) {
  if (shop.kind !== 'ready') return null;
  const { shown } = shop;
  const { stamp, hash } = shop.shop;
  if (shown.includes(hash) || shown === stamp)
    return errors > 0 ? <div>{counted(errors, 'row')} show an error: calculate again (F9).</div> : null;
  const old = /[A-Z\d]{4}$/.exec(shown)?.[0];
  return (
    <div>
      {old
        ? `Checked with …${old}; the shop is now …${hash.slice(-4)}.`
        : 'The shop cell is not calculated yet.'}{' '}
      Calculate again (F9).
    </div>
  );
}
