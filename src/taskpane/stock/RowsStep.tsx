import { Checkbox, MessageBar, MessageBarBody, Select } from '@fluentui/react-components';
import { verdictKind } from '../../core/check/verdict.js';
import { leftOutSentences } from '../../core/say/leftOutSentences.js';
import { stockRowSentences } from '../../core/say/stockRows.js';
import type { StockJobs } from '../../core/stock/list/stockJob.js';
import { counted } from '../shared/change/describeStep.js';
import { PaneField } from '../shared/PaneField.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { shortText } from '../shared/shortText.js';
import type { StockChoice } from './jobsOf.js';
import type { StockSource } from './useStockSource.js';

interface Props {
  source: StockSource;
  choice: StockChoice;
  choose: (choice: StockChoice) => void;
  jobs: StockJobs | { problem: string };
}

/** The first step: which list, and which of its rows. */
export function RowsStep({ source, choice, choose, jobs }: Props) {
  const styles = useSectionStyles();
  const names = source.lists.map(({ name }) => name);
  return (
    <section className={styles.part} aria-label="List and rows">
      <h2 className={styles.heading}>1. List and rows</h2>
      <PaneField label="List">
        <Select
          value={names.includes(choice.list) ? choice.list : ''}
          onChange={(_, { value }) => choose({ ...choice, list: value })}
        >
          {names.length > 1 && <option value="">All {names.length} lists</option>}
          {names.map((name) => (
            <option key={name} value={names.length > 1 ? name : ''}>
              {shortText(name)}
            </option>
          ))}
        </Select>
      </PaneField>
      {'problem' in jobs ? (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{shortText(jobs.problem, 400)}</MessageBarBody>
        </MessageBar>
      ) : (
        <Rows {...{ choice, choose, jobs }} />
      )}
    </section>
  );
}

function Rows({ choice, choose, jobs }: Omit<Props, 'source' | 'jobs'> & { jobs: StockJobs }) {
  const styles = useSectionStyles();
  const { planned, pieces, failing, offPress, hidden } = countsOf(jobs);
  const says = [
    planned === 0
      ? 'No row is planned.'
      : `${counted(planned, 'row is', 'rows are')} planned: ${counted(pieces, 'piece')} of ${counted(jobs.jobs.length, 'section')}.`,
    ...(jobs.onePiece.length === 0
      ? []
      : [`${counted(jobs.onePiece.length, 'row has', 'rows have')} no Qty: one piece each.`]),
    ...stockRowSentences(jobs),
    ...leftOutSentences(jobs.left),
  ];
  return (
    <>
      <div role="group" aria-label="Rows">
        <Checkbox
          label={`Plan rows that fail on the press too (${failing})`}
          checked={choice.withFailing}
          onChange={(_, { checked }) => choose({ ...choice, withFailing: checked === true })}
        />
        <Checkbox
          label={`Plan rows that are Off press too (${offPress})`}
          checked={choice.withOffPress}
          onChange={(_, { checked }) => choose({ ...choice, withOffPress: checked === true })}
        />
        {hidden > 0 && (
          <Checkbox
            label={`Plan hidden rows too (${hidden})`}
            checked={choice.withHidden}
            onChange={(_, { checked }) => choose({ ...choice, withHidden: checked === true })}
          />
        )}
      </div>
      <div role="status">
        {says.map((words) => (
          <p key={words} className={styles.text}>
            {shortText(words, 500)}
          </p>
        ))}
      </div>
    </>
  );
}

function countsOf({ jobs, left, hidden: hiddenRows }: StockJobs) {
  const parts = jobs.flatMap((job) => job.parts);
  const rows = new Map(parts.map(({ list, row, verdict }) => [`${list} ${row}`, verdict]));
  const verdicts = [...rows.values()];
  const asked = (kind: 'fails' | 'off press' | 'hidden') =>
    left.filter(({ why }) => why.is === 'asked' && why.kind === kind).length;
  return {
    planned: rows.size,
    pieces: parts.reduce((sum, part) => sum + part.pieces, 0),
    failing: verdicts.filter((each) => verdictKind(each) === 'fails').length + asked('fails'),
    offPress: verdicts.filter((each) => each === 'Off press').length + asked('off press'),
    hidden: hiddenRows.length + asked('hidden'),
  };
}
