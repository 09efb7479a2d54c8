import { Button, Text } from '@fluentui/react-components';
import { useEffect, useMemo, useState } from 'react';
import { verdictKind } from '../../../core/check/verdict.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { usePropose } from '../../shared/change/useChange.js';
import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';
import { comparePresses, type PressCompared } from './comparePresses.js';
import { setPress } from './groupChanges.js';
import type { ListRead } from './listRead.js';
import { markOf } from './markOf.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  results: readonly RowResult[];
}

/** Of more failing rows than these no press is tried. */
const mostTried = 300;
const namedMarks = 3;

/** How many rows can run, and the press that would let the most others run, with its change ready. */
export function CanRun({ shop, list, matches, results }: Props) {
  const propose = usePropose();
  const best = useBestPress({ shop, list, matches, results });
  const kinds = results.flatMap((result) => (result.blank ? [] : verdictKind(result.verdict)));
  const able = kinds.filter((kind) => kind === 'passes' || kind === 'open').length;
  if (kinds.length === 0) return null;
  const press = shortText(best?.press ?? '', 30);
  const which = best ? namesOf(best.runs, list, matches) : '';
  return (
    <div role="status" style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
      <Text weight="semibold">
        {able.toLocaleString('en')} of {kinds.length.toLocaleString('en')} can run
        {best && `; set ${press} on ${which} and ${best.runs.length} more can`}
      </Text>
      {best && (
        <Button
          size="small"
          onClick={() =>
            propose({
              title: `Set press ${press}`,
              make: async () => setPress(list, matches, best.runs, best.press),
            })
          }
        >
          Set {press} on {which}
        </Button>
      )}
    </div>
  );
}

function useBestPress({ shop, list, matches, results }: Props): PressCompared | undefined {
  const [best, setBest] = useState<PressCompared>();
  const failing = useMemo(
    () =>
      results.flatMap((result, row) => (!result.blank && verdictKind(result.verdict) === 'fails' ? row : [])),
    [results],
  );
  useEffect(() => {
    setBest(undefined);
    if (failing.length === 0 || failing.length > mostTried) return undefined;
    const aborter = new AbortController();
    void comparePresses(list, matches, failing, shop, { signal: aborter.signal }).then((found) => {
      if (aborter.signal.aborted) return;
      const [first] = [...(found ?? [])].sort((a, b) => b.runs.length - a.runs.length);
      setBest(first && first.runs.length > 0 ? first : undefined);
    });
    return () => aborter.abort();
  }, [failing, list, matches, shop]);
  return best;
}

/** `CL5`, `CL5, CL7 and BK1`; a count where they are more, or have no marks. */
function namesOf(rows: readonly number[], list: ListRead, matches: readonly ColumnMatch[]): string {
  const marks = rows.map((row) => markOf(list, matches, row));
  if (rows.length > namedMarks || marks.includes(''))
    return rows.length === 1 ? `row ${list.area.row + (rows[0] ?? 0) + 2}` : `${rows.length} rows`;
  return marks.length === 1 ? (marks[0] ?? '') : `${marks.slice(0, -1).join(', ')} and ${marks.at(-1)}`;
}
