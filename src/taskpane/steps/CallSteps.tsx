import { Button, Link } from '@fluentui/react-components';
import { useMemo } from 'react';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, cellAddress } from '../../workbook/area.js';
import type { ShopState } from '../shared/shopState.js';
import { CapacitySection } from './CapacitySection.js';
import { selectedOfCall } from './selectedOfCall.js';
import { StepList } from './StepList.js';
import { useStepsStyles } from './stepsStyles.js';
import type { Subject, SubjectArgument } from './subject.js';
import { workedCall } from './worked.js';

interface CallStepsInput {
  subject: Extract<Subject, { kind: 'call' }>;
  shop: ShopState;
  goTo: (area: Area) => void;
}

/** A cell with one of our functions: what it was given, its steps, and the hole in the capacity of a press. */
export function CallSteps({ subject, shop: state, goTo }: CallStepsInput) {
  const styles = useStepsStyles();
  const shop = state.kind === 'ready' ? state.shop : undefined;
  const worked = useMemo(() => workedCall(subject), [subject]);
  const hole = useMemo(() => shop && selectedOfCall(subject, shop), [subject, shop]);
  return (
    <>
      <section className={styles.part} aria-label="Cell">
        <h2 className={styles.heading}>TONROW.{subject.name}</h2>
        <ol className={styles.list}>
          {subject.arguments.map((argument, at) => (
            <Given key={at} argument={argument} goTo={goTo} />
          ))}
        </ol>
        <div className={styles.actions}>
          <Button onClick={() => goTo(subject.cell)}>Go to {cellAddress(subject.cell)}</Button>
        </div>
      </section>
      {typeof worked === 'string' ? (
        <p className={styles.text} role="status">
          {worked}
        </p>
      ) : (
        <StepList key={JSON.stringify(subject.cell)} steps={worked.steps} unit={worked.unit} />
      )}
      {shop && hole && <CapacitySection key={hole.press} shop={shop} {...hole} />}
    </>
  );
}

function Given({ argument, goTo }: { argument: SubjectArgument; goTo: (area: Area) => void }) {
  const styles = useStepsStyles();
  const { written, area, values } = argument;
  return (
    <li className={styles.given}>
      <span className={styles.text}>{shownCells(values)}</span>
      {area && (
        <Link as="button" aria-label={`Go to ${written}`} onClick={() => goTo(area)}>
          {written}
        </Link>
      )}
    </li>
  );
}

const longest = 60;

/** The value of a cell, or how many cells there are. */
function shownCells(values: readonly (readonly CellValue[])[]): string {
  const count = values.reduce((sum, row) => sum + row.length, 0);
  if (count > 1) return `${count} cells`;
  const text = String(values[0]?.[0] ?? 'left out');
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}
