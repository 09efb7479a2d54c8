import { Button, Link } from '@fluentui/react-components';
import { useMemo } from 'react';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, cellAddress } from '../../workbook/area.js';
import type { ShopState } from '../shared/shopState.js';
import { shortText } from '../shared/shortText.js';
import { CapacitySection } from './CapacitySection.js';
import { functionWorkings } from './functionWorkings.js';
import { selectedOfCall } from './selectedOfCall.js';
import { StepList } from './StepList.js';
import { useStepsStyles } from './stepsStyles.js';
import type { Subject, SubjectArgument } from './subject.js';
import { useWorkedCall } from './useWorkedCall.js';

interface CallStepsInput {
  subject: Extract<Subject, { kind: 'call' }>;
  shop: ShopState;
  goTo: (area: Area) => void;
}

/** A cell with one of our functions: what it was given, its steps, and the hole in the capacity of a press. */
export function CallSteps({ subject, shop: state, goTo }: CallStepsInput) {
  const styles = useStepsStyles();
  const shop = state.kind === 'ready' ? state.shop : undefined;
  const worked = useWorkedCall(subject);
  const help = useMemo(() => functionWorkings()?.helpOf(subject.name), [subject]);
  const hole = useMemo(() => shop && selectedOfCall(subject, shop), [subject, shop]);
  return (
    <>
      <section className={styles.part} aria-label="Cell">
        <h2 className={styles.heading}>TONROW.{subject.name}</h2>
        {help && <p className={styles.quiet}>{help.purpose}</p>}
        {subject.shown !== '' && (
          <p className={styles.text}>
            The cell shows <strong>{shortText(subject.shown, 120)}</strong>
          </p>
        )}
        <dl className={styles.given}>
          {subject.arguments.map((argument, at) => (
            <Given
              key={at}
              label={help?.arguments[at]?.label ?? `Argument ${at + 1}`}
              omitted={help?.arguments[at]?.omitted}
              argument={argument}
              goTo={goTo}
            />
          ))}
        </dl>
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

interface GivenInput {
  label: string;
  /** What it stands for when it is left out. */
  omitted: string | undefined;
  argument: SubjectArgument;
  goTo: (area: Area) => void;
}

function Given({ label, omitted, argument, goTo }: GivenInput) {
  const styles = useStepsStyles();
  const { written, area, values } = argument;
  return (
    <>
      <dt className={styles.term}>{label}</dt>
      <dd className={styles.givenValue}>
        {written === '' ? `left out: ${omitted ?? 'blank'}` : shownCells(values)}
        {area && (
          <>
            {' '}
            <Link as="button" aria-label={`Go to ${written}`} onClick={() => goTo(area)}>
              {written}
            </Link>
          </>
        )}
      </dd>
    </>
  );
}

const longest = 60;

/** The value of a cell, or how many cells there are. */
function shownCells(values: readonly (readonly CellValue[])[]): string {
  const count = values.reduce((sum, row) => sum + row.length, 0);
  if (count > 1) return `${count} cells`;
  const text = String(values[0]?.[0] ?? 'blank');
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}
