import { Button } from '@fluentui/react-components';
import { useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import type { CopyKind, CopyMaker, MadeCopy } from './copyMaker.js';
import { useHandOffStyles } from './handOffStyles.js';
import { Progress } from './Progress.js';
import { useChangedSince } from './useChangedSince.js';
import { sentenceOf, useTask } from './useTask.js';

interface Input {
  kind: CopyKind;
  maker: CopyMaker;
  workbook: Workbook;
}

/** A copy of the file: made, shown for what is in it, then saved. */
export function FileCopy({ kind, maker, workbook }: Input) {
  const styles = useHandOffStyles();
  const { task, start, stop } = useTask(() => maker.make(kind));
  const [saved, setSaved] = useState('');
  const changed = useChangedSince(workbook, task.at === 'done' && task.answer);
  const save = async (copy: MadeCopy) => {
    try {
      setSaved(await maker.save(copy, kind));
    } catch (error) {
      setSaved(sentenceOf(error));
    }
  };
  if (task.at === 'working')
    return <Progress label="Making the copy" done={task.done} total={task.total} stop={stop} />;
  if (task.at !== 'done')
    return (
      <>
        {task.at === 'failed' && (
          <p className={styles.text} role="alert">
            {task.message}
          </p>
        )}
        <div className={styles.actions}>
          <Button onClick={start}>Preview the copy</Button>
        </div>
      </>
    );
  return (
    <>
      <MadeCopyView copy={task.answer} kind={kind} />
      {changed && (
        <p className={styles.text} role="status">
          The workbook has changed since this copy.
        </p>
      )}
      <div className={styles.actions}>
        {changed ? (
          <Button onClick={start}>Preview the copy again</Button>
        ) : (
          <Button appearance="primary" onClick={() => void save(task.answer)}>
            Make values copy
          </Button>
        )}
        <Button onClick={stop}>Cancel</Button>
      </div>
      <p className={styles.text} role="status">
        {saved}
      </p>
    </>
  );
}

function MadeCopyView({ copy, kind }: { copy: MadeCopy; kind: CopyKind }) {
  const styles = useHandOffStyles();
  const { formulas, sheets, names, parts, stays } = copy;
  const gone = [
    `${formulas.toLocaleString('en')} formulas: their values stay`,
    ...sheets.map((name) => `the sheet ${name}`),
    ...names.map((name) => `the name ${name}`),
    ...(parts.some((part) => part.includes('webextension'))
      ? ['what asks for an add-in when the file is opened']
      : []),
  ];
  return (
    <div className={styles.preview}>
      <h4 className={styles.subheading}>Not in the copy</h4>
      <ul className={styles.list}>
        {gone.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <h4 className={styles.subheading}>Still in it</h4>
      <ul className={styles.list}>
        <li>every value the cells show</li>
        {kind === 'customer' && (
          <li>
            what check columns show: verdicts, shares, and notes that name your presses and their limits.
            Delete these columns in the copy where the customer is not to read them
          </li>
        )}
        {kind === 'shop' && (
          <li>all other formulas, the shop sheet, and the list from which formulas come back</li>
        )}
        {stays.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}
