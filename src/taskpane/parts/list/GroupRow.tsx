import { Button, Text } from '@fluentui/react-components';
import { useMemo } from 'react';
import type { Finding } from '../../../core/check/finding.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { lengthAsTyped } from '../../../core/row/lengthAsTyped.js';
import { readRow } from '../../../core/row/readRow.js';
import { say } from '../../../core/say/say.js';
import { asSentences } from '../../../core/say/sentencesOf.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { PartView } from '../../drawing/PartView.js';
import { usePropose } from '../../shared/change/useChange.js';
import { shortText } from '../../shared/shortText.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import type { ListRead } from './listRead.js';
import { markOf } from './markOf.js';
import { mendsOf } from './mends.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  /** Of the group; `row` is the one that is shown. */
  rows: readonly number[];
  row: number;
  finding: Finding;
  /** What the heading of the group says already. */
  told: string;
}

/** A row of a group: the comparison that fails, the part, and changes that would mend the group. */
export function GroupRow({ shop, list, matches, rows, row, finding, told }: Props) {
  const propose = usePropose();
  const part = useMemo(() => {
    const cells = list.rows[row] ?? [];
    const headings = readHeadings(headingsOf(matches));
    const job = readRow(cells, headings, shop);
    const length = lengthAsTyped(cells, headings, job.lengthMm, shop.unit);
    return { job, length, deciding: finding, unit: shop.unit, shop, mark: markOf(list, matches, row) };
  }, [list, matches, row, finding, shop]);
  const mends = useMemo(
    () => mendsOf(list, matches, rows, finding, shop),
    [list, matches, rows, finding, shop],
  );
  const [sentence] = asSentences([say(finding, shop.unit)]);
  return (
    <>
      {sentence !== undefined && sentence !== told && (
        <Text weight="semibold">{shortText(sentence, 400)}</Text>
      )}
      {part.job.section && <PartView part={part} isBareTold />}
      {mends.length > 0 && (
        <div style={{ display: 'flex', gap: 8, flexWrap: 'wrap' }}>
          {mends.map((mend) => (
            <Button key={mend.title} size="small" onClick={() => propose(mend)}>
              {mend.title}
            </Button>
          ))}
        </div>
      )}
    </>
  );
}
