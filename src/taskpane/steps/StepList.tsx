import { Button, mergeClasses } from '@fluentui/react-components';
import { useState } from 'react';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { NamedValue, Step } from '../../core/working/working.js';
import { formatQuantity } from '../../core/quantity/formatQuantity.js';
import { useStepsStyles } from './stepsStyles.js';

const firstShown = 6;

/** The steps of a calculation in their order; the first few, then all on request. */
export function StepList({ steps, unit }: { steps: readonly Step[]; unit: LengthUnit }) {
  const styles = useStepsStyles();
  const [all, setAll] = useState(false);
  const shown = all ? steps : steps.slice(0, firstShown);
  return (
    <section className={styles.part} aria-label="Working">
      <h2 className={styles.heading}>Working</h2>
      <ol className={styles.list}>
        {shown.map((step, at) => (
          <StepView key={at} step={step} number={at + 1} unit={unit} />
        ))}
      </ol>
      {steps.length > firstShown && (
        <div className={styles.actions}>
          <Button aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? `Show the first ${firstShown} steps` : `Show all ${steps.length} steps`}
          </Button>
        </div>
      )}
    </section>
  );
}

function StepView({ step, number, unit }: { step: Step; number: number; unit: LengthUnit }) {
  const styles = useStepsStyles();
  const { title, formula, values, result, source, cautions = [] } = step;
  return (
    <li className={styles.step}>
      <h3 className={styles.title}>
        {number}. {title}
      </h3>
      <p className={styles.formula}>{formula}</p>
      <dl className={styles.values}>
        {values.map((value, at) => (
          <Quantity key={at} value={value} unit={unit} />
        ))}
        <Quantity value={result} unit={unit} result />
      </dl>
      {cautions.map((caution) => (
        <p key={caution} className={styles.caution}>
          Caution: {caution}
        </p>
      ))}
      <p className={styles.source}>Source: {source}</p>
    </li>
  );
}

function Quantity({
  value,
  unit,
  result = false,
}: {
  value: NamedValue;
  unit: LengthUnit;
  result?: boolean;
}) {
  const styles = useStepsStyles();
  const { symbol, meaning } = value;
  return (
    <>
      <dt className={mergeClasses(styles.term, result && styles.result)}>
        {symbol === '' || symbol === meaning ? meaning : `${symbol}, ${meaning}`}
      </dt>
      <dd className={mergeClasses(styles.value, result && styles.result)}>{formatQuantity(value, unit)}</dd>
    </>
  );
}
