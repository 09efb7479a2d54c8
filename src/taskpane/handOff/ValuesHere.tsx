import { Button } from '@fluentui/react-components';
import { type RefCallback, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import type { ShopState } from '../shared/shopState.js';
import type { CopyKind } from './copyMaker.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import type { FoundFormula } from '../shared/formulaList.js';
import { isListName } from '../../sheet/keptFormulas/formulaList.js';
import { foundFormulas, goesForShop } from './ourFormulas.js';
import { itemsOf, LeaveOut } from './LeaveOut.js';
import { Progress } from './Progress.js';
import { useKeptFocus } from './useKeptFocus.js';
import { sentenceOf, useTask } from './useTask.js';
import { withoutItems } from './withoutItems.js';
import { changedValues, stepsToValues } from './ownValues.js';

interface Input {
  kind: CopyKind;
  workbook: Workbook;
  shop: ShopState;
}

interface Found {
  formulas: FoundFormula[];
  /** Sheets a customer should not get. */
  own: string[];
}

/** Where no file can be saved from here: the formulas of this workbook, which is the copy by then, become values. */
export function ValuesHere({ kind, workbook, shop }: Input) {
  const styles = useSectionStyles();
  const propose = usePropose();
  const [after, setAfter] = useState('');
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const { task, start, stop } = useTask(async (work): Promise<Found> => {
    const own = await ownSheets(workbook, shop);
    const goes = (formula: string, sheet: string) =>
      kind === 'shop' ? goesForShop(formula) : !own.includes(sheet);
    return { formulas: await foundFormulas(workbook, goes, work), own };
  });
  const turn = async ({ formulas: found }: Found) => {
    const formulas = withoutItems(found, new Set(kind === 'customer' ? itemsOf(ticked) : []));
    try {
      const steps = await stepsToValues(workbook, formulas, { listed: kind === 'shop' });
      const written = () => {
        changedValues(workbook, formulas).then(
          (cells) => setAfter(verified(cells, formulas.length)),
          (error: unknown) => setAfter(sentenceOf(error)),
        );
      };
      propose({ title: 'Make values copy', remarks: remarks(kind), steps, written });
    } catch (error) {
      setAfter(sentenceOf(error));
    }
  };
  const focus = useKeptFocus(task.at);
  if (task.at === 'working')
    return <Progress label="Looking at the sheets" done={task.done} total={task.total} stop={stop} />;
  return (
    <>
      <p className={styles.text}>
        This spreadsheet lets no add-in save a file. Save a copy of the workbook first, open the copy, and go
        on there.
      </p>
      {task.at === 'failed' && (
        <p className={styles.text} role="alert">
          {task.message}
        </p>
      )}
      {kind === 'customer' && <LeaveOut ticked={ticked} set={setTicked} />}
      {task.at === 'done' && <FoundView found={task.answer} kind={kind} heading={focus} />}
      <div className={styles.actions}>
        <Button ref={focus} onClick={start}>
          Preview the copy
        </Button>
        {task.at === 'done' && task.answer.formulas.length > 0 && (
          <Button appearance="primary" onClick={() => void turn(task.answer)}>
            Make values copy
          </Button>
        )}
      </div>
      <p className={styles.text} role="status">
        {after}
      </p>
    </>
  );
}

/** The sheets with the shop's tables, and lists of formulas. */
async function ownSheets(workbook: Workbook, shop: ShopState): Promise<string[]> {
  const lists = (await workbook.sheets()).map(({ name }) => name).filter(isListName);
  const tables = shop.kind === 'ready' ? Object.values(shop.tables).map(({ area }) => area.sheet) : [];
  return [...new Set([...tables, ...lists])];
}

function remarks(kind: CopyKind): string[] {
  return kind === 'shop'
    ? ['Do this in a copy of the workbook. The formulas are kept on a sheet of their own and can come back.']
    : ['Do this in a copy of the workbook. These formulas do not come back once the file is saved.'];
}

function verified(cells: readonly string[], count: number): string {
  if (cells.length === 0)
    return `Done: ${count.toLocaleString('en')} formulas are values now, and every cell shows what it showed.`;
  return `${cells.length} cells do not show what they showed, ${cells.slice(0, 5).join(', ')} among them. Undo the change.`;
}

interface FoundViewProps {
  found: Found;
  kind: CopyKind;
  heading: RefCallback<HTMLElement>;
}

function FoundView({ found: { formulas, own }, kind, heading }: FoundViewProps) {
  const styles = useSectionStyles();
  if (formulas.length === 0)
    return <p className={styles.text}>There is no formula that would become a value.</p>;
  const perSheet = new Map<string, number>();
  for (const { area } of formulas) perSheet.set(area.sheet, (perSheet.get(area.sheet) ?? 0) + 1);
  return (
    <div className={styles.preview}>
      <h4 ref={heading} tabIndex={-1} className={styles.subheading}>
        These formulas become values
      </h4>
      <ul className={styles.list}>
        {[...perSheet].map(([sheet, count]) => (
          <li key={sheet}>
            {sheet}: {count.toLocaleString('en')}
          </li>
        ))}
      </ul>
      {kind === 'customer' && (
        <p className={styles.text}>
          The copy still asks for the add-in, and names its author. On a computer choose File, Info, Check for
          Issues, Inspect Document, and remove Task Pane Add-ins and Document Properties.
        </p>
      )}
      {kind === 'customer' && own.length > 0 && (
        <p className={styles.text}>
          Then delete these sheets yourself, since the pane could not undo that: {own.join(', ')}. Delete the
          name ShopStamp too.
        </p>
      )}
    </div>
  );
}
