import { Button } from '@fluentui/react-components';
import { type RefCallback, useState } from 'react';
import { itemsOf, LeaveOut } from './LeaveOut.js';
import type { Workbook } from '../../workbook/port.js';
import type { CopyKind, CopyMaker, MadeCopy } from './copyMaker.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { Progress } from './Progress.js';
import { useChangedSince } from '../shared/useChangedSince.js';
import { sentenceOf, useTask } from './useTask.js';
import { useKeptFocus } from './useKeptFocus.js';

interface Input {
  kind: CopyKind;
  maker: CopyMaker;
  workbook: Workbook;
}

/** A copy of the file: made, shown for what is in it, then saved. */
export function FileCopy({ kind, maker, workbook }: Input) {
  const styles = useSectionStyles();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const {
    task,
    start: make,
    stop,
  } = useTask(() => maker.make(kind, kind === 'customer' ? itemsOf(ticked) : []));
  const [previewed, setPreviewed] = useState<readonly string[]>([]);
  const [saved, setSaved] = useState('');
  const start = () => {
    setSaved('');
    setPreviewed(ticked);
    make();
  };
  const edited = useChangedSince(workbook, task.at === 'done' && task.answer);
  const isOther = task.at === 'done' && previewed.join() !== ticked.join();
  const changed = edited || isOther;
  const boxes = kind === 'customer' && <LeaveOut ticked={ticked} set={setTicked} />;
  const save = async (copy: MadeCopy) => {
    try {
      setSaved(await maker.save(copy, kind));
    } catch (error) {
      setSaved(sentenceOf(error));
    }
  };
  const focus = useKeptFocus(task.at);
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
        {boxes}
        <div className={styles.actions}>
          <Button ref={focus} onClick={start}>
            Preview the copy
          </Button>
        </div>
      </>
    );
  return (
    <>
      {boxes}
      <MadeCopyView copy={task.answer} kind={kind} heading={focus} />
      {changed && (
        <p className={styles.text} role="status">
          {isOther ? 'The boxes have changed since this copy.' : 'The workbook has changed since this copy.'}
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

interface MadeCopyProps {
  copy: MadeCopy;
  kind: CopyKind;
  heading: RefCallback<HTMLElement>;
}

function MadeCopyView({ copy, kind, heading }: MadeCopyProps) {
  const styles = useSectionStyles();
  const { formulas, sheets, names, parts, emptied, stays } = copy;
  const gone = [
    `${formulas.toLocaleString('en')} formulas: their values stay`,
    ...sheets.map((name) => `the sheet ${name}`),
    ...names.map((name) => `the name ${name}`),
    ...emptied.map((column) => `what the checks say in the column ${column}`),
    ...(parts.some((part) => part.includes('webextension'))
      ? ['the prompt for an add-in when the file is opened']
      : []),
  ];
  return (
    <div className={styles.preview}>
      <h4 ref={heading} tabIndex={-1} className={styles.subheading}>
        Not in the copy
      </h4>
      <ul className={styles.list}>
        {gone.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <h4 className={styles.subheading}>Still in it</h4>
      <ul className={styles.list}>
        <li>{emptied.length > 0 ? 'every other value the cells show' : 'every value the cells show'}</li>
        {kind === 'customer' && (
          <li>
            what the check columns show, unless a box above leaves it out: notes name your presses and their
            limits
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
