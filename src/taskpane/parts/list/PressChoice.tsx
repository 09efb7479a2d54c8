import { Button, Spinner, Text } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import { counted } from '../../shared/change/describeStep.js';
import { usePropose } from '../../shared/change/useChange.js';
import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';
import { comparePresses, type PressCompared } from './comparePresses.js';
import { setPress } from './groupChanges.js';
import type { ListRead } from './listRead.js';
import { PressTable } from './PressTable.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  rows: readonly number[];
}

/** Which press can run these rows, and the way to give them one. */
export function PressChoice({ shop, list, matches, rows }: Props) {
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
  const able = compared.filter(({ runs }) => runs.length > 0);
  const unsure = compared.some(({ unknown }) => unknown > 0);
  return (
    <>
      <PressTable compared={compared} rows={rows.length} currency={shop.settings.settings.currency} />
      {able.length > 0 && (
        <div style={{ display: 'flex', gap: 8, flexWrap: 'wrap' }}>
          {able.map((each, at) => (
            <Button
              key={`${each.press} ${at}`}
              size="small"
              aria-label={`Set ${shortText(each.press, 30)} for ${which(each)}`}
              onClick={() => set(each)}
            >
              Set {shortText(each.press, 30)}
            </Button>
          ))}
        </div>
      )}
      {able.length === 0 && (
        <Text>
          No press in the shop {unsure ? 'is sure to run' : 'can run'} {rows.length === 1 ? 'it' : 'them'} as
          drawn.
        </Text>
      )}
    </>
  );
}
