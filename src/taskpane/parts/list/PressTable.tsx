import { makeStyles, tokens } from '@fluentui/react-components';
import { captionStyle } from '../../shared/captionStyle.js';
import { shortText } from '../../shared/shortText.js';
import { VerdictMark } from '../../shared/VerdictMark.js';
import { costText, minutesText } from '../../shared/workTexts.js';
import type { PressCompared } from './comparePresses.js';

const useStyles = makeStyles({
  table: { borderCollapse: 'collapse', width: '100%' },
  cell: {
    textAlign: 'start',
    // Breaks between words only: a heading is narrower than its column would like.
    overflowWrap: 'normal',
    padding: '4px 6px 4px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  number: {
    textAlign: 'end',
    overflowWrap: 'normal',
    padding: '4px 16px 4px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  missing: { margin: 0, paddingInlineStart: '18px', fontSize: tokens.fontSizeBase200 },
});

interface Props {
  compared: readonly PressCompared[];
  /** How many rows there are. */
  rows: number;
  /** What amounts are in; empty where the shop does not say. */
  currency: string;
}

/** The presses side by side on some rows: how many each runs, how long that takes, what it costs, what is missing. */
export function PressTable({ compared, rows, currency }: Props) {
  const styles = useStyles();
  const missing = missingOf(compared);
  const hasTime = compared.some(({ runs }) => runs.length > 0);
  const hasCost = compared.some(({ work }) => work.cost !== undefined);
  const heading = (className: string) => (title: string) => (
    <th key={title} scope="col" className={className}>
      {title}
    </th>
  );
  const [headed, counted] = [heading(styles.cell), heading(styles.number)];
  return (
    <>
      <table className={styles.table}>
        <caption
          style={captionStyle}
        >{`Which press can run ${rows === 1 ? 'this row' : 'these rows'}?`}</caption>
        <thead>
          <tr>
            {['Press', 'Can run'].map(headed)}
            {hasTime && counted('Minutes')}
            {hasCost && counted(currency === '' ? 'Cost' : `Cost, ${currency}`)}
            {headed('Why not')}
          </tr>
        </thead>
        <tbody>
          {compared.map(({ press, runs, mostly, work }, at) => (
            <tr key={`${press} ${at}`}>
              <th scope="row" className={styles.cell}>
                {shortText(press, 30)}
              </th>
              <td className={styles.cell}>
                {rows > 1 ? `${runs.length} of ${rows}` : runs.length > 0 ? 'yes' : 'no'}
              </td>
              {hasTime && <td className={styles.number}>{runs.length > 0 && minutesText(work.seconds)}</td>}
              {hasCost && <td className={styles.number}>{runs.length > 0 && costText(work.cost)}</td>}
              <td className={styles.cell}>
                {mostly && (
                  <span style={{ display: 'inline-flex', gap: 6, alignItems: 'center' }}>
                    <VerdictMark verdict={mostly} />
                    {mostly}
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {missing.length > 0 && (
        <ul className={styles.missing} aria-label="What is missing in minutes and cost">
          {missing.map((each) => (
            <li key={each}>{shortText(each, 400)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Each sentence once, with the presses it is about where it is not about all that run a row. */
function missingOf(compared: readonly PressCompared[]): string[] {
  const able = compared.filter(({ runs }) => runs.length > 0);
  const sentences = [...new Set(able.flatMap(({ work }) => work.missing))];
  return sentences.map((sentence) => {
    const about = able.filter(({ work }) => work.missing.includes(sentence));
    return about.length === compared.length
      ? sentence
      : `${about.map(({ press }) => shortText(press, 30)).join(', ')}: ${sentence}`;
  });
}
