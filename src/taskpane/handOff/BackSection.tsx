import { Button } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { counted } from '../shared/change/describeStep.js';
import { usePropose } from '../shared/change/useChange.js';
import { useLatest } from '../shared/useLatest.js';
import { useWatch } from '../shared/useShop.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { sentenceOf } from './useTask.js';
import { listIn } from '../shared/formulaList.js';
import { type BringBack, bringBack } from './ownValues.js';

/** Bring formulas back: shown where the workbook has a list of them. */
export function BackSection({ workbook }: { workbook: Workbook }) {
  const styles = useSectionStyles();
  const propose = usePropose();
  const [list, setList] = useState<string>();
  const [said, setSaid] = useState('');
  const look = useLatest(() => listIn(workbook), setList);
  useEffect(() => look(), [look, workbook]);
  useWatch(workbook, ({ kind }) => {
    if (kind === 'sheets' || kind === 'cells') look();
  });
  const bring = async (name: string) => {
    setSaid('');
    try {
      const back = await bringBack(workbook, name);
      const written = () => {
        back.verify().then(
          (different) => setSaid(outcome(different, back.count, name)),
          (error: unknown) => setSaid(sentenceOf(error)),
        );
      };
      propose({ title: 'Bring formulas back', remarks: remarks(back, name), steps: back.steps, written });
    } catch (error) {
      setSaid(sentenceOf(error));
    }
  };
  if (list === undefined && said === '') return null;
  return (
    <section className={styles.part} aria-label="Bring formulas back">
      <h2 className={styles.heading}>Bring formulas back</h2>
      {list !== undefined && (
        <>
          <p className={styles.text}>This workbook is a values copy: the sheet {list} keeps its formulas.</p>
          <div className={styles.actions}>
            <Button appearance="primary" onClick={() => void bring(list)}>
              Bring formulas back
            </Button>
          </div>
        </>
      )}
      <p className={styles.text} role="status">
        {said}
      </p>
    </section>
  );
}

function remarks({ count, moved, gone, filled, edited }: BringBack, list: string): string[] {
  const back = [
    `${counted(count, 'formula comes', 'formulas come')} back into ${count === 1 ? 'its cell' : 'their cells'}.`,
  ];
  if (moved > 0)
    back.push(
      `${counted(moved, 'of them goes', 'of them go')} to a different cell than before, since rows or columns moved.`,
    );
  if (gone.length > 0)
    back.push(
      `${counted(gone.length, 'formula does', 'formulas do')} not come back, since the row was deleted: ${gone.slice(0, 5).join(', ')}.`,
    );
  if (filled > 0)
    back.push(
      `${counted(filled, 'cell is', 'cells are')} emptied so that a formula beside can fill them again.`,
    );
  back.push(`The list on the sheet ${list} is emptied: it is no longer needed.`);
  if (edited.length > 0)
    back.push(
      `${counted(edited.length, 'of these cells was', 'of these cells were')} edited since, ${edited.slice(0, 5).join(', ')} among them: what was typed there is lost.`,
    );
  return back;
}

function outcome(different: readonly string[], count: number, list: string): string {
  if (different.length === 0)
    return `All ${count.toLocaleString('en')} formulas are back, each identical to the list. The sheet ${list} is empty and can be deleted.`;
  return `${different.length} formulas differ from the list, ${different.slice(0, 5).join(', ')} among them. Undo the change.`;
}
