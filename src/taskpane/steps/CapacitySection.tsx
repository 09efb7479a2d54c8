import { Field, Select } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Grade } from '../../core/material/grade.js';
import { isInvented } from '../../core/press/isInvented.js';
import type { Press } from '../../core/press/press.js';
import type { Shop } from '../../core/shop/readShop.js';
import { DrawingView } from '../drawing/DrawingView.js';
import { holeLadder } from '../../drawing/capacity/holeLadder.js';
import type { SelectedHole } from '../../drawing/capacity/selectedHole.js';
import { inventedNotice } from '../shop/sheet/starter.js';
import { useStepsStyles } from './stepsStyles.js';
import { useWidth } from '../shared/useWidth.js';

export interface CapacityInput {
  shop: Shop;
  grade: Grade;
  selected: SelectedHole;
  /** The press of the row or call; the first of the shop where it names none. */
  press?: string | undefined;
}

/** What a press punches, with the selected hole in it. */
export function CapacitySection({ shop, grade, selected, press: named }: CapacityInput) {
  const styles = useStepsStyles();
  const { element, width } = useWidth<HTMLDivElement>();
  const [chosen, setChosen] = useState<string>();
  const name = chosen ?? named ?? shop.presses[0]?.name;
  const press = shop.presses.find((each) => each.name === name) ?? shop.presses[0];
  if (!press) return <p className={styles.text}>The shop has no press to draw.</p>;
  return (
    <section className={styles.part} aria-label="Capacity" ref={element}>
      <h2 className={styles.heading}>Capacity</h2>
      <div className={styles.actions}>
        {shop.presses.length > 1 && (
          <Field label="Press">
            <Select value={press.name} onChange={(_, { value }) => setChosen(value)}>
              {shop.presses.map((each) => (
                <option key={each.name}>{each.name}</option>
              ))}
            </Select>
          </Field>
        )}
      </div>
      <Capacity {...{ shop, grade, selected, press, width }} />
    </section>
  );
}

interface Drawn {
  shop: Shop;
  grade: Grade;
  selected: SelectedHole;
  press: Press;
  width: number;
}

/** Wider, the bars of a ladder are no easier to read. */
const mostWidth = 560;

function Capacity({ shop, grade, selected, press, width: room }: Drawn) {
  const styles = useStepsStyles();
  const width = Math.min(room, mostWidth);
  const drawing = useMemo(
    () => holeLadder({ press, grade, shop, selected, width }),
    [shop, grade, selected, press, width],
  );
  if ('problem' in drawing) return <p className={styles.text}>There is no drawing: {drawing.problem}</p>;
  return (
    <>
      {isInvented(press) && <p className={styles.text}>{inventedNotice}</p>}
      <DrawingView drawing={drawing} />
    </>
  );
}
