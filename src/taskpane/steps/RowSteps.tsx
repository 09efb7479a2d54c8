import { Button } from '@fluentui/react-components';
import { useMemo } from 'react';
import { hardestOf } from '../../core/check/severity.js';
import { noteOf } from '../../core/say/noteOf.js';
import { governs } from '../../core/say/say.js';
import { nameKey } from '../../core/shop/table.js';
import { type Area, cellOf } from '../../workbook/area.js';
import type { ShopState } from '../shared/shopState.js';
import { WorkText } from '../shared/WorkText.js';
import { VerdictWord } from '../shared/VerdictMark.js';
import { CapacitySection } from './CapacitySection.js';
import { PartSection } from './PartSection.js';
import { selectedOfRow } from './selectedOfRow.js';
import { formatQuantity } from '../../core/quantity/formatQuantity.js';
import { SetupSection } from './SetupSection.js';
import { shownShare } from './shownShare.js';
import { StepList } from './StepList.js';
import { useStepsStyles } from './stepsStyles.js';
import type { Subject } from './subject.js';
import { workedRow } from './worked.js';

interface RowStepsInput {
  subject: Extract<Subject, { kind: 'row' }>;
  shop: Extract<ShopState, { kind: 'ready' }>;
  goTo: (area: Area) => void;
}

/** A row of a list: its verdict, the part, what the press can do, and every step. */
export function RowSteps({ subject, shop: state, goTo }: RowStepsInput) {
  const styles = useStepsStyles();
  const { shop } = state;
  const worked = useMemo(() => workedRow(subject.headings, subject.cells, shop), [subject, shop]);
  const hole = useMemo(
    () => (typeof worked === 'string' ? undefined : selectedOfRow(worked.job, worked.result, shop)),
    [worked, shop],
  );
  if (typeof worked === 'string') return <p className={styles.text}>{worked}</p>;
  const { mark, result, setup, work, steps } = worked;
  const press = pressArea(state, result.press);
  return (
    <>
      <section className={styles.part} aria-label="Row">
        <h2 className={styles.heading}>{mark === '' ? `Row ${subject.area.row + 1}` : mark}</h2>
        <VerdictWord verdict={result.verdict} />
        <p className={styles.text}>{headline(worked, shop.unit)}</p>
        <p className={styles.quiet}>{noteOf(result, shop.unit)}</p>
        <WorkText work={work} currency={shop.settings.settings.currency} />
        <div className={styles.actions}>
          <Button onClick={() => goTo(subject.area)}>Go to row</Button>
          {press && <Button onClick={() => goTo(press)}>Go to {result.press}</Button>}
        </div>
      </section>
      <PartSection worked={worked} shop={shop} />
      <SetupSection {...{ setup, verdict: result.verdict, unit: shop.unit }} />
      {hole && <CapacitySection key={result.press} shop={shop} {...hole} press={result.press} />}
      <StepList key={`${subject.area.sheet} ${subject.area.row}`} steps={steps} unit={shop.unit} />
    </>
  );
}

function headline({ result }: Exclude<ReturnType<typeof workedRow>, string>, unit: 'in' | 'mm'): string {
  const { deciding, findings, press } = result;
  const decidedBy = deciding ? governs(deciding, unit) : '';
  const hardest = hardestOf(findings);
  const force =
    hardest?.forceN === undefined
      ? ''
      : `, ${formatQuantity({ kind: 'force', value: hardest.forceN }, unit)}`;
  // The share may be that of another operation than the one that decides.
  const shareOf = hardest ? governs(hardest, unit) : '';
  const of = shareOf === decidedBy ? '' : ` for ${shareOf}`;
  const facts = [
    decidedBy === '' ? '' : `Limited by ${decidedBy}`,
    hardest ? `${shownShare(hardest.use)} of the rating${of}${force}` : '',
    press ?? '',
  ];
  return facts.filter((text) => text !== '').join(' · ');
}

/** The column of a press on the sheet. */
function pressArea(
  { tables }: Extract<ShopState, { kind: 'ready' }>,
  press: string | undefined,
): Area | undefined {
  const { area, values } = tables.presses;
  const at = values[0]?.findIndex((cell) => press !== undefined && nameKey(cell) === nameKey(press)) ?? -1;
  return at < 0 ? undefined : { ...cellOf(area, 0, at), rows: area.rows };
}
