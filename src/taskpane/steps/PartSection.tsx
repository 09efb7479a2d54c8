import { useMemo } from 'react';
import type { Shop } from '../../core/shop/readShop.js';
import { PartView } from '../drawing/PartView.js';
import { useStepsStyles } from './stepsStyles.js';
import type { WorkedRow } from './worked.js';
import type { OperatorSteps } from '../../core/work/operatorSteps.js';
import type { HoleSetting } from '../../drawing/part/settingMarks.js';

/** The part as it lies on the press. */
export function PartSection({ worked, shop }: { worked: WorkedRow; shop: Shop }) {
  const styles = useStepsStyles();
  const part = useMemo(() => {
    const { job, result, mark, length, setup } = worked;
    return {
      job,
      deciding: result.deciding,
      unit: shop.unit,
      shop,
      mark,
      length,
      settings: settingsOf(setup),
    };
  }, [worked, shop]);
  return (
    <section className={styles.part} aria-label="Part">
      <h2 className={styles.heading}>Part</h2>
      <PartView part={part} />
    </section>
  );
}

/** The numbered settings of the holes. */
function settingsOf(setup: OperatorSteps): HoleSetting[] {
  if (setup.is !== 'steps') return [];
  return setup.steps.flatMap(({ setting, holes = [] }) =>
    setting === undefined ? [] : holes.map((hole) => ({ ...hole, number: setting })),
  );
}
