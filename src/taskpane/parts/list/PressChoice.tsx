import { Button, makeStyles, Spinner, Text, tokens } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import { captionStyle } from '../../shared/captionStyle.js';
import { counted } from '../../shared/change/describeStep.js';
import { usePropose } from '../../shared/change/useChange.js';
import { shortText } from '../../shared/shortText.js';
import { VerdictMark } from '../../shared/VerdictMark.js';
import type { ColumnMatch } from './columnMatch.js';
import { comparePresses, type PressCompared } from './comparePresses.js';
import { setPress } from './groupChanges.js';
import type { ListRead } from './listRead.js';

const useStyles = makeStyles({
  table: { borderCollapse: 'collapse', width: '100%' },
  cell: {
    textAlign: 'start',
    padding: '4px 6px 4px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  rows: readonly number[];
}

/** What each press would make of these rows, and the way to give them one. */
export function PressChoice({ shop, list, matches, rows }: Props) {
  const styles = useStyles();
  const propose = usePropose();
  const [compared, setCompared] = useState<readonly PressCompared[]>();
  useEffect(() => {
    const aborter = new AbortController();
    void comparePresses(list, matches, rows, shop, { signal: aborter.signal }).then(
      (found) => found && !aborter.signal.aborted && setCompared(found),
    );
    return () => aborter.abort();
  }, [list, matches, rows, shop]);
  if (!compared) return <Spinner size="tiny" label="Trying every press" />;
  // Rows that the press does not run keep what they have.
  const set = ({ press, runs }: PressCompared) => {
    const title = `Set press ${shortText(press, 30)}`;
    propose({ title, make: async () => setPress(list, matches, runs, press) });
  };
  const which = ({ runs }: PressCompared) => {
    if (runs.length < rows.length) return `the ${counted(runs.length, 'row')} it runs`;
    return rows.length === 1 ? 'this row' : `these ${counted(rows.length, 'row')}`;
  };
  const some = compared.some(({ runs }) => runs.length > 0);
  const unsure = compared.some(({ unknown }) => unknown > 0);
  return (
    <>
      <table className={styles.table}>
        <caption
          style={captionStyle}
        >{`What each press would make of ${rows.length === 1 ? 'this row' : 'these rows'}`}</caption>
        <thead>
          <tr>
            {['Press', 'Runs', 'The others'].map((heading) => (
              <th key={heading} scope="col" className={styles.cell}>
                {heading}
              </th>
            ))}
            {some && (
              <th scope="col" className={styles.cell}>
                Change
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {compared.map((each, at) => {
            const { press, runs, mostly } = each;
            return (
              <tr key={`${press} ${at}`}>
                <th scope="row" className={styles.cell}>
                  {shortText(press, 30)}
                </th>
                <td className={styles.cell}>
                  {runs.length} of {rows.length}
                </td>
                <td className={styles.cell}>
                  {mostly && (
                    <span style={{ display: 'inline-flex', gap: 6, alignItems: 'center' }}>
                      <VerdictMark verdict={mostly} />
                      {mostly}
                    </span>
                  )}
                </td>
                {some && (
                  <td className={styles.cell}>
                    {runs.length > 0 && (
                      <Button
                        size="small"
                        aria-label={`Set ${shortText(press, 30)} for ${which(each)}`}
                        onClick={() => set(each)}
                      >
                        Set {shortText(press, 30)}
                      </Button>
                    )}
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
      {!some && (
        <Text>
          No press of the shop {unsure ? 'is sure to run' : 'runs'}{' '}
          {rows.length === 1 ? 'it as it is' : 'them as they are'} drawn.
        </Text>
      )}
    </>
  );
}
