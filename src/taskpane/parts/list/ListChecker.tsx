import { Button, MessageBar, MessageBarBody, Subtitle2, Text } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import type { Workbook } from '../../../workbook/port.js';
import { AtOnceBar } from '../../shared/AtOnceBar.js';
import { counted } from '../../shared/change/describeStep.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopState } from '../../shared/shopState.js';
import { AddCheckColumns, AddFurtherColumns } from './AddCheckColumns.js';
import { ColumnMatches } from './ColumnMatches.js';
import { ChecksOnSheet } from './ChecksOnSheet.js';
import { asItStands, type ColumnMatch, headingsOf, matchColumns, matchedTo } from './columnMatch.js';
import { headingsProblem } from './headingsProblem.js';
import { hasVerdicts } from '../../shared/checkedLists.js';
import type { ListRead } from './listRead.js';
import { ListResults } from './ListResults.js';
import { unreadSizes, unreadSizesSentence } from './unreadSizes.js';
import { type ListCheck, useListCheck } from './useListCheck.js';
import { useFocusedView } from '../../shared/useFocusedView.js';
import { stack } from '../../shared/stack.js';

interface Props {
  workbook: Workbook;
  shop: Shop;
  state: ShopState;
  list: ListRead;
}

/** A list with its headings: what its columns are taken for, the check, and what it found. */
export function ListChecker({ workbook, shop, state, list }: Props) {
  const [chosen, setChosen] = useState<Readonly<Record<number, string>>>({});
  const matches = useMemo(() => matchesOf(list, chosen, shop), [list, chosen, shop]);
  const hasChecks = hasVerdicts(list.headings);
  // A checked list is shown as its formulas read it: they guess no heading.
  const read = useMemo(() => (hasChecks ? matches.map(asItStands) : matches), [hasChecks, matches]);
  const problem = headingsProblem(read, list.area.column);
  const unread = unreadSizesSentence(unreadSizes(read, list.rows, shop.unit), list.area.column);
  const headings = problem === undefined ? headingsOf(read) : undefined;
  const { check, start: begin, stop } = useListCheck(list, headings, shop, hasChecks);
  const [asked, setAsked] = useState(false);
  const start = () => {
    setAsked(true);
    begin();
  };
  const view = useFocusedView<HTMLDivElement>(asked ? check.at : '');
  return (
    <>
      <ColumnMatches
        matches={matches}
        firstColumn={list.area.column}
        problem={problem}
        onField={(at, field) => setChosen({ ...chosen, [at]: field })}
      />
      {problem !== undefined && (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{shortText(problem, 400)}</MessageBarBody>
        </MessageBar>
      )}
      {unread !== undefined && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>{shortText(unread, 400)}</MessageBarBody>
        </MessageBar>
      )}
      {hasChecks && <ChecksOnSheet {...{ list, matches }} onSheet={read} readable={problem === undefined} />}
      {problem === undefined && !hasChecks && check.at === 'idle' && (
        <Button appearance="primary" style={{ justifySelf: 'start' }} onClick={start}>
          Check this list
        </Button>
      )}
      <Progress check={check} onStop={stop} onStart={start} />
      {check.at === 'done' && problem === undefined && (
        <div ref={view} style={stack(12)}>
          <Subtitle2 as="h2" style={{ margin: 0 }}>
            What the check found
          </Subtitle2>
          {hasChecks ? (
            <AddFurtherColumns {...{ workbook, list }} matches={read} />
          ) : (
            <AddCheckColumns {...{ workbook, state, list, matches }} />
          )}
          <ListResults {...{ shop }} matches={read} list={check.list} results={check.results} />
        </div>
      )}
    </>
  );
}

function matchesOf(list: ListRead, chosen: Readonly<Record<number, string>>, shop: Shop): ColumnMatch[] {
  return matchColumns(list.headings, list.rows, shop, list.written).map((match) => {
    const field = chosen[match.at];
    return field === undefined ? match : matchedTo(match, field === '' ? undefined : field);
  });
}

function Progress({ check, onStop, onStart }: { check: ListCheck; onStop: () => void; onStart: () => void }) {
  if (check.at === 'checking')
    return (
      <div style={stack(6)}>
        <Text role="status">
          {check.done.toLocaleString('en')} of {counted(check.total, 'row')} checked
        </Text>
        <AtOnceBar aria-label="Rows checked" value={check.total > 0 ? check.done / check.total : 1} />
        <Button style={{ justifySelf: 'start' }} onClick={onStop}>
          Stop
        </Button>
      </div>
    );
  if (check.at !== 'stopped') return null;
  return (
    <div role="status" style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
      <Text>Stopped after {counted(check.done, 'row')}. Nothing was written.</Text>
      <Button size="small" onClick={onStart}>
        Check again
      </Button>
    </div>
  );
}
