import { Switch } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Shop } from '../../core/shop/readShop.js';
import type { OperatorSteps } from '../../core/work/operatorSteps.js';
import type { HoleSetting } from '../../drawing/part/settingMarks.js';
import { DrawingView } from '../drawing/DrawingView.js';
import { partDrawing } from '../../drawing/part/partDrawing.js';
import { useStepsStyles } from './stepsStyles.js';
import { useWidth } from '../shared/useWidth.js';
import type { WorkedRow } from './worked.js';

/** A drawing wider than this says no more. */
const widest = 560;

/** The part as it lies on the press. */
export function PartSection({ worked, shop }: { worked: WorkedRow; shop: Shop }) {
  const styles = useStepsStyles();
  const { element, width } = useWidth<HTMLDivElement>();
  const [all, setAll] = useState(false);
  const drawing = useMemo(() => {
    const { job, result, mark, setup } = worked;
    const settings = settingsOf(setup);
    const input = { job, deciding: result.deciding, unit: shop.unit, shop, mark, all, settings };
    return partDrawing({ ...input, width: Math.min(width, widest) });
  }, [worked, shop, all, width]);
  return (
    <section className={styles.part} aria-label="Part" ref={element}>
      <h2 className={styles.heading}>Part</h2>
      {'problem' in drawing ? (
        <p className={styles.text}>{drawing.problem}</p>
      ) : (
        <>
          <DrawingView drawing={drawing} />
          <Switch checked={all} onChange={(_, { checked }) => setAll(checked)} label="Show all distances" />
        </>
      )}
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
