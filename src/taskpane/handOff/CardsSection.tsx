import { Button, Select } from '@fluentui/react-components';
import { useState } from 'react';
import { cardsPage } from '../../print/card/cardsPage.js';
import { cardStyle } from '../../print/card/cardStyle.js';
import type { Workbook } from '../../workbook/port.js';
import { PaneField } from '../shared/PaneField.js';
import { shortText } from '../shared/shortText.js';
import type { ShopState } from '../shared/shopState.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { PrintedPage } from '../shared/print/PrintedPage.js';
import { Progress } from './Progress.js';
import { today } from '../shared/today.js';
import { useChangedSince } from '../shared/useChangedSince.js';
import { useTask } from './useTask.js';
import { jobName } from '../shared/jobName.js';
import { type PaneChoice, paneCards } from './cards/paneCards.js';

interface Input {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** The operator's cards, one a mark: for all rows that can be made, those of a press, or the selected rows. */
export function CardsSection({ workbook, shop }: Input) {
  const styles = useSectionStyles();
  const choices = choicesOf(shop);
  const [chosen, setChosen] = useState(0);
  const choice = choices[chosen]?.choice ?? { is: 'made' };
  const { task, start, stop } = useTask(async (work) => {
    const { cards, leftOut, told } = await paneCards(workbook, shop, choice, work);
    const job = { name: jobName(), date: today() };
    const of = (style: string) => cardsPage(cards, shop.shop, job, style);
    const left = leftOut.map(({ head, verdict }) => `${head.mark || 'a row without a mark'} (${verdict})`);
    return { cards: cards.length, left, told, page: of(cardStyle), shown: of('') };
  });
  const changed = useChangedSince(workbook, task.at === 'done' && task.answer);
  return (
    <section className={styles.part} aria-label="Cards">
      <h2 className={styles.heading}>Cards</h2>
      <p className={styles.text}>
        One card per mark for whoever runs the press, two to a page, then a cut list for each press.
      </p>
      <PaneField label="For">
        <Select value={String(chosen)} onChange={(_, { value }) => setChosen(Number(value))}>
          {choices.map(({ title }, at) => (
            <option key={title} value={at}>
              {shortText(title)}
            </option>
          ))}
        </Select>
      </PaneField>
      {task.at === 'working' && (
        <Progress label="Making cards" done={task.done} total={task.total} stop={stop} />
      )}
      {task.at === 'failed' && (
        <p className={styles.text} role="alert">
          {task.message}
        </p>
      )}
      {task.at === 'done' && (
        <p className={styles.text} role="status">
          {changed ? 'The workbook has changed since these cards. ' : ''}
          {saidOf(task.answer)}
        </p>
      )}
      {task.at === 'done' && task.answer.cards > 0 && (
        <PrintedPage
          {...{ workbook }}
          name="Cards"
          file="cards.html"
          sheet="Cards"
          page={task.answer.page}
          shown={task.answer.shown}
          style={cardStyle}
        />
      )}
      <div className={styles.actions}>
        <Button onClick={start}>{task.at === 'done' ? 'Refresh cards' : 'Make cards'}</Button>
      </div>
    </section>
  );
}

function choicesOf({ shop }: Input['shop']): { title: string; choice: PaneChoice }[] {
  return [
    { title: 'All rows that can be made', choice: { is: 'made' } },
    ...shop.presses.map(({ name }) => ({
      title: `Rows on ${name}`,
      choice: { is: 'press', press: name } satisfies PaneChoice,
    })),
    { title: 'The selected rows', choice: { is: 'selected' } },
  ];
}

const mostNamed = 20;

function saidOf({ cards, left, told }: { cards: number; left: string[]; told: string[] }): string {
  const made = [`${cards} ${cards === 1 ? 'card' : 'cards'}.`, ...told].join(' ');
  if (left.length === 0) return made;
  const more = left.length > mostNamed ? ` and ${left.length - mostNamed} more` : '';
  const named = left.slice(0, mostNamed).map((each) => shortText(each, 60));
  return `${made} No card for rows that cannot be made as they stand: ${named.join(', ')}${more}.`;
}
