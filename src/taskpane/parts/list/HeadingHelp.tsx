import { Input, makeStyles, tokens } from '@fluentui/react-components';
import { Fragment, useMemo, useState } from 'react';
import { headingsDrawing } from '../../../drawing/headingsDrawing.js';
import { DrawingView } from '../../drawing/DrawingView.js';
import { counted } from '../../shared/change/describeStep.js';
import { PaneField } from '../../shared/PaneField.js';
import { stack } from '../../shared/stack.js';
import { headingsLike } from './headingList.js';

const useStyles = makeStyles({
  summary: { cursor: 'pointer', padding: '4px 0' },
  meanings: {
    display: 'grid',
    gridTemplateColumns: 'fit-content(35%) minmax(0, 1fr)',
    columnGap: '12px',
    rowGap: '4px',
    margin: 0,
  },
  meaning: { margin: 0, overflowWrap: 'anywhere' },
  also: { color: tokens.colorNeutralForeground3 },
});

/** Every heading a list can have, what stands below it, in which unit, and what else it may be called; with a picture. */
export function HeadingHelp() {
  const styles = useStyles();
  const [isOpen, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className={styles.summary}>What each heading means</summary>
      {isOpen && (
        <div style={stack(12)}>
          <DrawingView drawing={headingsDrawing()} list="The distances in words" />
          <HeadingList />
        </div>
      )}
    </details>
  );
}

function HeadingList() {
  const styles = useStyles();
  const [asked, setAsked] = useState('');
  const found = useMemo(() => headingsLike(asked), [asked]);
  return (
    <>
      <PaneField label="Search headings">
        <Input type="search" value={asked} onChange={(_, { value }) => setAsked(value)} />
      </PaneField>
      <span role="status" className={styles.also}>
        {found.length === 0
          ? 'No heading has that name. Choose under Read as what the column is.'
          : counted(found.length, 'heading')}
      </span>
      <dl className={styles.meanings}>
        {found.map(({ name, meaning, unit, also }) => (
          <Fragment key={name}>
            <dt>{name}</dt>
            <dd className={styles.meaning}>
              {meaning}
              {unit !== '' && <div className={styles.also}>Unit: {unit}</div>}
              {also.length > 0 && <div className={styles.also}>Also: {also.join(', ')}</div>}
            </dd>
          </Fragment>
        ))}
      </dl>
    </>
  );
}
