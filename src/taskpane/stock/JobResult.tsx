import { Button, MessageBar, MessageBarBody } from '@fluentui/react-components';
import { useState } from 'react';
import { formatMass } from '../../core/quantity/formatMass.js';
import { barLength } from '../../core/say/barLength.js';
import { moneyWords, proofSentences, shortageSentence } from '../../core/say/stockPlanSentences.js';
import { kerfWords, partlyPricedWords } from '../../core/stock/list/planWords.js';
import type { ListPlan, PlannedJob } from '../../core/stock/list/jobPlan.js';
import type { FactTable } from '../../drawing/drawing.js';
import { barDrawing } from '../../drawing/stock/barDrawing.js';
import { DrawingView } from '../drawing/DrawingView.js';
import { FactTableView } from '../drawing/FactTableView.js';
import { counted } from '../shared/change/describeStep.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { shortText } from '../shared/shortText.js';
import { jobName } from './jobName.js';

interface Props {
  planned: PlannedJob;
  plan: ListPlan;
  width: number;
  isFirst: boolean;
}

/** The plan of a section: what to buy, how good it is, what is not cut, and the bars. */
export function JobResult({ planned, plan, width, isFirst }: Props) {
  const styles = useSectionStyles();
  const { job, bars, shortages } = planned;
  const { unit, currency } = plan;
  const name = jobName(job);
  const says = [
    ...proofSentences(planned.plan, job, currency, unit),
    ...(job.origin === 'common lengths' ? ['The lengths are invented: ask your supplier.'] : []),
    partlyPricedWords(job) ?? '',
    kerfWords(job, unit),
    restWords(planned, plan),
  ];
  return (
    <section className={styles.preview} aria-label={name}>
      <h3 className={styles.subheading}>{name}</h3>
      {shortages.map((each) => (
        <MessageBar
          key={`${each.part.list} ${each.part.row} ${each.why}`}
          intent="warning"
          layout="multiline"
        >
          <MessageBarBody>{shortText(shortageSentence(each, unit), 300)}</MessageBarBody>
        </MessageBar>
      ))}
      {planned.purchases.length > 0 && (
        <FactTableView table={purchaseTable(planned, plan)} caption={`To buy: ${name}`} />
      )}
      <p className={styles.text}>{says.filter(Boolean).join(' ')}</p>
      {bars.length > 0 && (
        <details open={isFirst}>
          <summary style={{ cursor: 'pointer', padding: '4px 0' }}>
            How to cut them: {counted(bars.length, 'pattern')}
          </summary>
          <Bars {...{ planned, plan, width }} />
        </details>
      )}
    </section>
  );
}

const firstShown = 6;
/** The frame around a section. */
const around = 22;
const stripHeight = 26;
const widest = 640;

function Bars({ planned: { job, bars }, plan, width }: Omit<Props, 'isFirst'>) {
  const styles = useSectionStyles();
  const [shown, setShown] = useState(firstShown);
  const { unit, losses } = plan;
  const room = {
    width: Math.min(width - around, widest),
    height: stripHeight,
    longestMm: bars.reduce((longest, { stock }) => Math.max(longest, stock.lengthMm), 0),
  };
  const more = Math.min(bars.length - shown, firstShown);
  return (
    <div className={styles.part}>
      {bars.slice(0, shown).map((bar) => (
        <DrawingView
          key={bar.pattern}
          list={`Cut list: ${jobName(job)}, bar ${bar.pattern}`}
          drawing={barDrawing({
            ...{ bar, unit, room },
            widthMm: job.widthMm,
            trimMm: losses.trimMm ?? 0,
            gripMm: losses.gripMm ?? 0,
          })}
        />
      ))}
      {more > 0 && (
        <div className={styles.actions}>
          <Button onClick={() => setShown(shown + firstShown)}>
            Show {more} more of {bars.length}
          </Button>
        </div>
      )}
    </div>
  );
}

function purchaseTable({ purchases }: PlannedJob, { unit, currency }: ListPlan): FactTable {
  const isPriced = purchases.some(({ cost }) => cost !== undefined);
  return {
    headings: ['Bars', 'Length', 'Mass', ...(isPriced ? ['Cost'] : [])],
    rows: purchases.map(({ stock, bars, massKg, cost }) => [
      bars.toLocaleString('en'),
      barLength(stock.lengthMm, unit),
      formatMass(massKg, unit),
      ...(isPriced ? [cost === undefined ? 'no price' : moneyWords(cost, currency)] : []),
    ]),
  };
}

/** What is kept and what is scrap of what is bought. */
function restWords({ bars, mass }: PlannedJob, { unit }: ListPlan): string {
  const kept = bars.filter(({ isKept }) => isKept);
  const drops = kept.reduce((sum, { bars: count }) => sum + count, 0);
  const share = mass.boughtKg > 0 ? Math.round((mass.scrapKg / mass.boughtKg) * 1000) / 10 : 0;
  const scrap = `Scrap ${formatMass(mass.scrapKg, unit)}, ${share}% of what is bought.`;
  if (drops === 0) return `No drop is kept. ${scrap}`;
  const lengths = kept
    .slice(0, 6)
    .map(({ bars: count, restMm }) => `${count} × ${barLength(restMm, unit)}`)
    .join(', ');
  return `${counted(drops, 'drop')} to keep: ${lengths}${kept.length > 6 ? ' and more' : ''}. ${scrap}`;
}
