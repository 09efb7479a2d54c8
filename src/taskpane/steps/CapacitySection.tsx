import { Field, Select } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import { InputError } from '../../core/inputError.js';
import { findGrade } from '../../core/material/findGrade.js';
import type { Grade } from '../../core/material/grade.js';
import { builtInGrades } from '../../core/material/gradeTable.js';
import type { Press } from '../../core/press/press.js';
import type { Shop } from '../../core/shop/readShop.js';
import { DrawingView } from '../drawing/DrawingView.js';
import { holeLadder } from '../../drawing/capacity/holeLadder.js';
import type { SelectedHole } from '../../drawing/capacity/selectedHole.js';
import { wedge } from '../../drawing/capacity/wedge.js';
import { useStepsStyles } from './stepsStyles.js';
import { useWidth } from '../shared/useWidth.js';

export interface CapacityInput {
  shop: Shop;
  grade: Grade;
  selected: SelectedHole;
  /** The press of the row or call; the first of the shop where it names none. */
  press?: string | undefined;
}

/** From this width on hole against thickness, below it the ladder. */
const wideFrom = 480;
const heightShare = 0.7;

/** What a press punches, with the selected hole in it. */
export function CapacitySection({ shop, grade, selected, press: named }: CapacityInput) {
  const styles = useStepsStyles();
  const { element, width } = useWidth<HTMLDivElement>();
  const [chosen, setChosen] = useState<string>();
  const [second, setSecond] = useState('');
  const name = chosen ?? named ?? shop.presses[0]?.name;
  const press = shop.presses.find((each) => each.name === name) ?? shop.presses[0];
  const wide = width >= wideFrom;
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
        {wide && (
          <Field label="Compare with grade">
            <Select value={second} onChange={(_, { value }) => setSecond(value)}>
              <option value="">none</option>
              {[...shop.grades, ...builtInGrades].map((each, at) => (
                <option key={at}>{each.name}</option>
              ))}
            </Select>
          </Field>
        )}
      </div>
      <Capacity {...{ shop, grade, selected, press, wide, width, second }} />
    </section>
  );
}

interface Drawn {
  shop: Shop;
  grade: Grade;
  selected: SelectedHole;
  press: Press;
  wide: boolean;
  width: number;
  second: string;
}

function Capacity({ shop, grade, selected, press, wide, width, second }: Drawn) {
  const styles = useStepsStyles();
  const drawing = useMemo(() => {
    if (!wide) return holeLadder({ press, grade, shop, selected, width });
    const grades = [grade, ...compared(second, shop)];
    return wedge({ press, grades, shop, selected, width, height: Math.round(width * heightShare) });
  }, [shop, grade, selected, press, wide, width, second]);
  if ('problem' in drawing) return <p className={styles.text}>There is no drawing: {drawing.problem}</p>;
  return <DrawingView drawing={drawing} />;
}

function compared(name: string, shop: Shop): Grade[] {
  if (name === '') return [];
  try {
    return [findGrade(name, 'Grade', shop.grades)];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}
