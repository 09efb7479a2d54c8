import { sentenceInCell } from '../../core/inputError.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { placesNotGiven } from '../../core/say/stepWords.js';
import type { OperatorSteps } from '../../core/work/operatorSteps.js';
import type { Verdict } from '../../core/check/verdict.js';
import { WholeSizes } from '../shared/WholeSizes.js';
import { SettingsTable } from './SettingsTable.js';
import { capital, stepText } from './stepText.js';
import { useStepsStyles } from './stepsStyles.js';

interface Props {
  setup: OperatorSteps;
  verdict: Verdict;
  unit: LengthUnit;
}

/** How the press is set for a row: fence and stops, strokes, and every step in its order. */
export function SetupSection({ setup, verdict, unit }: Props) {
  const styles = useStepsStyles();
  if (setup.is === 'blank') return null;
  return (
    <section className={styles.part} aria-label="Set-up">
      <h2 className={styles.heading}>Set-up</h2>
      {setup.is === 'steps' ? (
        <Steps {...{ setup, unit }} />
      ) : (
        <p className={styles.text}>{reasonOf(setup, verdict)}</p>
      )}
    </section>
  );
}

function reasonOf(setup: Exclude<OperatorSteps, { is: 'steps' | 'blank' }>, verdict: Verdict): string {
  switch (setup.is) {
    case 'places not given':
      return placesNotGiven(setup);
    case 'refused':
      return `No steps: ${sentenceInCell(setup.failure)}`;
    case 'reasons':
      return `No steps: the verdict is ${verdict}.`;
  }
}

function Steps({ setup, unit }: { setup: Extract<OperatorSteps, { is: 'steps' }>; unit: LengthUnit }) {
  const styles = useStepsStyles();
  const { steps, mind } = setup;
  const settings = steps.filter(({ action }) => action === 'gauge setting');
  const strokes = steps.filter(({ action }) => action === 'stroke');
  return (
    <>
      {mind !== undefined && (
        <p className={styles.caution}>
          {mind === 'open' ? 'OK so far' : 'Near limit'}: read the note above before setting up.
        </p>
      )}
      {settings.length > 0 && <SettingsTable settings={settings} unit={unit} />}
      {strokes.length > 0 && (
        <>
          <h3 className={styles.title}>Strokes</h3>
          <ul className={styles.list}>
            {strokes.map((step, at) => (
              <li key={at}>
                {step.station !== undefined && `${capital(step.station)}: `}
                <WholeSizes text={stepText(step, unit)} />
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary style={{ cursor: 'pointer', padding: '4px 0' }}>Every step, in order</summary>
        <ol>
          {steps.map((step, at) => (
            <li key={at}>
              <WholeSizes text={stepText(step, unit, { titled: true })} />
            </li>
          ))}
        </ol>
      </details>
    </>
  );
}
