import { Button, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import { useMemo } from 'react';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { counted } from '../../shared/change/describeStep.js';
import { usePropose } from '../../shared/change/useChange.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { shortText } from '../../shared/shortText.js';
import { renameSteps } from './addChecks.js';
import { textFormats } from './textFormats.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import { runsOf } from './failGroups.js';
import { inputSpan, type ListRead } from './listRead.js';
import { fillChecks, rowsWithoutChecks } from './missingChecks.js';

interface Props {
  list: ListRead;
  /** What the columns are taken for. */
  matches: readonly ColumnMatch[];
  /** What the formulas on the sheet read. */
  onSheet: readonly ColumnMatch[];
  /** Whether the formulas can read the headings at all. */
  readable: boolean;
}

/** Where the checks on the sheet do not say what the pane could: headings they do not read, rows without formulas. */
export function ChecksOnSheet({ list, matches, onSheet, readable }: Props) {
  const renamed = matches.filter(({ rename }) => rename !== undefined);
  return (
    <>
      {renamed.length > 0 && <Renamed list={list} renamed={renamed} />}
      {readable && <Missing list={list} onSheet={onSheet} />}
    </>
  );
}

const namedColumns = 3;

function Renamed({ list, renamed }: { list: ListRead; renamed: readonly ColumnMatch[] }) {
  const says = renamed.slice(0, namedColumns).map(({ heading, field, rename }) => {
    const name = shortText(heading, 30);
    return field === undefined ? `${name} is still read` : `${name} is not read as ${rename}`;
  });
  const more = renamed.length > namedColumns ? `, nor are ${renamed.length - namedColumns} more as said` : '';
  return (
    <Notice
      says={`On the sheet ${says.join(', ')}${more}. The rows below are as the sheet sees them.`}
      proposal={renameHeadings(list, renamed)}
    />
  );
}

/** Gives headings of a checked list the names that its formulas read. */
export function renameHeadings(list: ListRead, renamed: readonly ColumnMatch[]): Proposal {
  const [only] = renamed;
  const title =
    renamed.length === 1 && only
      ? `Rename ${shortText(only.heading, 30)} to ${shortText(only.rename ?? '', 30)}`
      : `Rename ${counted(renamed.length, 'heading')}`;
  return { title, steps: renameSteps(list, renamed) };
}

function Missing({ list, onSheet }: Pick<Props, 'list' | 'onSheet'>) {
  const { checks, source } = list;
  const rows = useMemo(
    () => (checks ? rowsWithoutChecks(list, checks, readHeadings(headingsOf(onSheet))) : []),
    [list, checks, onSheet],
  );
  const span = inputSpan(onSheet, checks);
  if (!checks || !source.table || !span || rows.length === 0) return null;
  const columns = { table: source.table.name, first: span.first.heading, last: span.last.heading };
  return (
    <Notice
      says={`${counted(rows.length, 'row of this list has', 'rows of this list have')} no checks yet.`}
      proposal={filled(list, onSheet, rows, fillChecks(list, checks, columns, rows))}
    />
  );
}

/** What is read of these rows becomes text too, as it did when the checks were added. */
function filled(
  { area, rows }: ListRead,
  matches: readonly ColumnMatch[],
  of: readonly number[],
  proposal: Proposal,
): Proposal {
  const asText = runsOf(of).flatMap(({ row, count }) =>
    textFormats({ area: { ...area, row: area.row + row }, rows: rows.slice(row, row + count) }, matches),
  );
  return { ...proposal, steps: [...asText, ...proposal.steps] };
}

function Notice({ says, proposal }: { says: string; proposal: Proposal }) {
  const propose = usePropose();
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>{says}</MessageBarBody>
      <MessageBarActions>
        <Button size="small" onClick={() => propose(proposal)}>
          {proposal.title}
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}
