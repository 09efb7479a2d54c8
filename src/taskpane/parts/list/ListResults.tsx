import {
  Accordion,
  AccordionHeader,
  AccordionItem,
  AccordionPanel,
  Button,
  makeStyles,
  Text,
  tokens,
} from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import { type Verdict, verdictKind, verdicts } from '../../../core/check/verdict.js';
import { isFullyChecked } from '../../../core/row/isFullyChecked.js';
import { type RowResult, wordOf } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { counted } from '../../shared/change/describeStep.js';
import { shortText } from '../../shared/shortText.js';
import { WholeSizes } from '../../shared/WholeSizes.js';
import { VerdictMark, VerdictWord } from '../../shared/VerdictMark.js';
import type { ColumnMatch } from './columnMatch.js';
import { FailGroupPanel, shownOfReason } from './FailGroupPanel.js';
import { type FailGroup, failGroups } from './failGroups.js';
import { CanRun } from './CanRun.js';
import type { ListRead } from './listRead.js';
import { markOf } from './markOf.js';
import { rowsTold } from './rowsTold.js';
import { RowStrip } from './RowStrip.js';
import { PressChoice } from './PressChoice.js';
import { stack } from '../../shared/stack.js';

interface Props {
  shop: Shop;
  list: ListRead;
  matches: readonly ColumnMatch[];
  results: readonly RowResult[];
}

const firstShown = 20;

const useStyles = makeStyles({
  header: {
    display: 'flex',
    gap: '8px',
    alignItems: 'baseline',
    overflowWrap: 'anywhere',
    paddingBlock: '6px',
  },
  chevron: { alignSelf: 'flex-start', paddingBlockStart: '8px' },
  counts: {
    listStyleType: 'none',
    margin: 0,
    padding: 0,
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fill, minmax(144px, 1fr))',
    columnGap: '16px',
    rowGap: '2px',
    maxWidth: '480px',
  },
  count: {
    display: 'flex',
    justifyContent: 'space-between',
    columnGap: '8px',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

/** How many rows have which verdict, and the failing ones grouped by reason. */
export function ListResults(props: Props) {
  const styles = useStyles();
  const { results, shop } = props;
  const groups = useMemo(() => failGroups(results, shop.unit), [results, shop]);
  const [shown, setShown] = useState(firstShown);
  return (
    <>
      <CanRun {...props} />
      <RowStrip {...props} />
      <Counts results={results} />
      <RowsTold {...props} />
      {groups.length > 0 && (
        <Accordion collapsible aria-label="Failing rows by reason">
          {groups.slice(0, shown).map((group) => (
            <AccordionItem key={group.key} value={group.key}>
              <AccordionHeader as="h3" expandIcon={{ className: styles.chevron }}>
                <span className={styles.header}>
                  <VerdictMark verdict={group.verdict} />
                  <span>
                    <strong>{titleOf(group, props)}</strong>
                    {group.rows.length > 1 && marksOf(group, props)}
                    <br />
                    <WholeSizes text={shortText(group.reason, shownOfReason)} />
                  </span>
                </span>
              </AccordionHeader>
              <AccordionPanel style={{ marginInline: 4 }}>
                <FailGroupPanel {...props} group={group} />
              </AccordionPanel>
            </AccordionItem>
          ))}
        </Accordion>
      )}
      <AllRows {...props} />
      {groups.length > shown && (
        <Button style={{ justifySelf: 'start' }} onClick={() => setShown(shown + firstShown)}>
          Show more of {groups.length} reasons
        </Button>
      )}
    </>
  );
}

/** Which rows are no parts, which are checked though nobody sees them, and which merged cells hold for one row only. */
function RowsTold({ list, results }: Props) {
  const told = useMemo(() => rowsTold(list, results), [list, results]);
  if (told.length === 0) return null;
  return (
    <ul aria-label="Notes on rows" style={{ margin: 0, paddingInlineStart: 18 }}>
      {told.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

/** Which press can run the whole list; worked out when it is opened. */
function AllRows({ shop, list, matches, results }: Props) {
  const rows = useMemo(() => results.flatMap(({ blank }, row) => (blank ? [] : row)), [results]);
  if (rows.length === 0 || shop.presses.length === 0) return null;
  return (
    <Accordion collapsible aria-label="All rows">
      <AccordionItem value="all">
        <AccordionHeader as="h3">Compare presses on {counted(rows.length, 'row')}</AccordionHeader>
        <AccordionPanel style={{ ...stack(10), marginInline: 4 }}>
          <PressChoice {...{ shop, list, matches, rows }} />
        </AccordionPanel>
      </AccordionItem>
    </Accordion>
  );
}

/** A group of one row is called by its mark. */
function titleOf({ rows, verdict }: FailGroup, { list, matches }: Props): string {
  const [row = 0] = rows;
  const mark = rows.length === 1 ? markOf(list, matches, row) : '';
  return `${mark === '' ? counted(rows.length, 'row') : mark} · ${verdict}`;
}

/** So many marks of a group are named in its heading. */
const namedMarks = 3;

function marksOf({ rows }: FailGroup, { list, matches }: Props): string {
  const marks: string[] = [];
  for (const row of rows) {
    const mark = markOf(list, matches, row);
    if (mark !== '') marks.push(mark);
    if (marks.length > namedMarks) break;
  }
  if (marks.length === 0) return '';
  const more = marks.length > namedMarks ? ' …' : '';
  return ` · ${marks.slice(0, namedMarks).join(', ')}${more}`;
}

/** How many rows have which verdict; how many are not fully checked, and how many of these fail. */
function countsOf(results: readonly RowResult[]) {
  const counts = new Map<Verdict, number>();
  let [open, failing] = [0, 0];
  for (const result of results) {
    const word = wordOf(result);
    if (word !== undefined) counts.set(word, (counts.get(word) ?? 0) + 1);
    if (result.blank || isFullyChecked(result)) continue;
    open += 1;
    if (verdictKind(result.verdict) === 'fails') failing += 1;
  }
  return { counts, open, failing };
}

function Counts({ results }: { results: readonly RowResult[] }) {
  const styles = useStyles();
  const { counts, open, failing } = useMemo(() => countsOf(results), [results]);
  const present = [...verdicts].reverse().filter((verdict) => counts.has(verdict));
  if (present.length === 0) return <Text role="status">No row of this list has anything to check.</Text>;
  return (
    <div role="status">
      <ul aria-label="Rows by verdict" className={styles.counts}>
        {present.map((verdict) => (
          <li key={verdict} className={styles.count}>
            <VerdictWord verdict={verdict} />
            <span style={{ whiteSpace: 'nowrap' }}>{counts.get(verdict)?.toLocaleString('en')}</span>
          </li>
        ))}
      </ul>
      {open > failing && <Text>{counted(open - failing, 'row')} not fully checked. </Text>}
      {failing > 0 && (
        <Text>{counted(failing, 'failing row has', 'failing rows have')} open points too.</Text>
      )}
    </div>
  );
}
