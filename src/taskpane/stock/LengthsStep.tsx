import { Checkbox, MessageBar, MessageBarBody } from '@fluentui/react-components';
import { barLength } from '../../core/say/barLength.js';
import { moneyWords } from '../../core/say/stockPlanSentences.js';
import { commonLengthsMm } from '../../core/stock/list/commonLengths.js';
import { listWords } from '../../core/say/listWords.js';
import type { StockJob, StockJobs } from '../../core/stock/list/stockJob.js';
import type { Workbook } from '../../workbook/port.js';
import { counted } from '../shared/change/describeStep.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { shortText } from '../shared/shortText.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { AskLengths } from './AskLengths.js';
import { jobName } from './jobName.js';
import type { StockChoice } from './jobsOf.js';
import { PartsOfJob } from './PartsOfJob.js';
import { StockList } from './StockList.js';
import type { StockSource } from './useStockSource.js';

interface Props {
  workbook: Workbook;
  shop: ReadyShop;
  source: StockSource;
  choice: StockChoice;
  choose: (choice: StockChoice) => void;
  jobs: StockJobs;
}

/** The second step: the lengths that bars of each section come in. */
export function LengthsStep({ workbook, shop, source, choice, choose, jobs }: Props) {
  const styles = useSectionStyles();
  const { unit } = shop.shop;
  const missing = jobs.jobs.filter(
    ({ stocks, unreadable }) => stocks.length === 0 && unreadable.length === 0,
  );
  const invented = jobs.jobs.some(({ origin }) => origin === 'common lengths');
  const common = listWords(commonLengthsMm[unit].map((mm) => barLength(mm, unit)));
  return (
    <section className={styles.part} aria-label="Lengths to buy">
      <h2 className={styles.heading}>2. Lengths to buy</h2>
      {(missing.length > 0 || invented || choice.commonLengths) && (
        <Checkbox
          label={`Where no length is known, plan with ${common}. These are invented: ask your supplier.`}
          checked={choice.commonLengths}
          onChange={(_, { checked }) => choose({ ...choice, commonLengths: checked === true })}
        />
      )}
      {jobs.unreadable.map((sentence) => (
        <Warning key={sentence} says={sentence} />
      ))}
      {jobs.jobs.map((job) => (
        <div key={job.key} className={styles.preview}>
          <h3 className={styles.subheading}>{jobName(job)}</h3>
          {job.unreadable.map((sentence) => (
            <Warning key={sentence} says={`${sentence} The section is not planned until then.`} />
          ))}
          {job.stocks.length > 0 ? (
            <p className={styles.text}>{stockWords(job, shop)}</p>
          ) : (
            job.unreadable.length === 0 && (
              <p className={styles.text}>No length is known, so it is not planned.</p>
            )
          )}
          {job.unreadable.length === 0 && (job.stocks.length === 0 || job.origin === 'common lengths') && (
            <AskLengths {...{ workbook, shop, job }} table={source.stock} />
          )}
          <PartsOfJob job={job} unit={unit} />
        </div>
      ))}
      <details>
        <summary style={{ cursor: 'pointer', padding: '4px 0' }}>Edit the Stock table</summary>
        <StockList {...{ workbook, shop }} table={source.stock} />
      </details>
    </section>
  );
}

function Warning({ says }: { says: string }) {
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>{shortText(says, 300)}</MessageBarBody>
    </MessageBar>
  );
}

function stockWords({ stocks, origin }: StockJob, { shop }: ReadyShop): string {
  const { currency } = shop.settings.settings;
  const each = stocks.map(({ lengthMm, price, available }) => {
    const more = [
      ...(price === undefined ? [] : [moneyWords(price, currency)]),
      ...(available === undefined ? [] : [`${counted(available, 'bar')} available`]),
    ];
    return `${barLength(lengthMm, shop.unit)}${more.length === 0 ? '' : ` (${more.join(', ')})`}`;
  });
  return `Comes in ${listWords(each)}${origin === 'common lengths' ? ': invented' : ''}.`;
}
