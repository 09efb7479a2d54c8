import { Button, Spinner } from '@fluentui/react-components';
import { useState } from 'react';
import type { Area } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { ShopState } from '../shared/shopState.js';
import { CallSteps } from './CallSteps.js';
import { RowSteps } from './RowSteps.js';
import { useStepsStyles } from './stepsStyles.js';
import { type SubjectState, useSubject } from './useSubject.js';

export interface StepsProps {
  workbook: Workbook;
  shop: ShopState;
}

/** The working and the drawings of the selected cell or row. */
export default function Steps({ workbook, shop }: StepsProps) {
  const styles = useStepsStyles();
  const { state, again } = useSubject(workbook);
  const [trouble, setTrouble] = useState('');
  const goTo = (area: Area) => {
    setTrouble('');
    workbook.goTo(area).catch((error: unknown) => {
      if (!(error instanceof WorkbookError)) throw error;
      setTrouble(error.message);
    });
  };
  return (
    <div className={styles.place}>
      {stale(shop) && (
        <p className={styles.text} role="status">
          The sheet was calculated with another shop than it holds now. These steps use the shop as it is now.
        </p>
      )}
      {trouble !== '' && (
        <p className={styles.text} role="alert">
          {trouble}
        </p>
      )}
      <Shown state={state} shop={shop} goTo={goTo} again={again} />
    </div>
  );
}

function stale(shop: ShopState): boolean {
  return shop.kind === 'ready' && shop.shown !== shop.shop.stamp;
}

interface ShownInput {
  state: SubjectState;
  shop: ShopState;
  goTo: (area: Area) => void;
  again: () => void;
}

function Shown({ state, shop, goTo, again }: ShownInput) {
  const styles = useStepsStyles();
  if (state.kind === 'reading' || shop.kind === 'loading')
    return <Spinner label="Reading what is selected" />;
  if (state.kind === 'failed' && shop.kind === 'none') return <NoShop shop={shop} />;
  if (state.kind === 'failed')
    return (
      <div className={styles.part} role="alert">
        <p className={styles.text}>{state.message}</p>
        <div className={styles.actions}>
          <Button onClick={again}>Try again</Button>
        </div>
      </div>
    );
  const { subject } = state;
  switch (subject.kind) {
    case 'row':
      if (shop.kind === 'ready') return <RowSteps subject={subject} shop={shop} goTo={goTo} />;
      return <NoShop shop={shop} />;
    case 'call':
      return <CallSteps subject={subject} shop={shop} goTo={goTo} />;
    case 'unclear':
      return (
        <p className={styles.text} role="status">
          {subject.message}
        </p>
      );
    case 'nothing':
      return <Nothing />;
  }
}

function NoShop({ shop }: { shop: Exclude<ShopState, { kind: 'ready' | 'loading' }> }) {
  const styles = useStepsStyles();
  return (
    <p className={styles.text} role="status">
      {shop.kind === 'broken'
        ? `The shop of this workbook cannot be read: ${shop.message}`
        : 'This workbook has no shop sheet to check against. If it was deleted, undo that; if not, add one under Shop.'}
    </p>
  );
}

function Nothing() {
  const styles = useStepsStyles();
  return (
    <div className={styles.part}>
      <h2 className={styles.heading}>Nothing to show yet</h2>
      <p className={styles.text}>
        Select a row of a parts list, or a cell with a TONROW formula. Its steps and drawings appear here.
      </p>
    </div>
  );
}
