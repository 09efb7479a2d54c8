import { makeStyles, Select, Text, tokens } from '@fluentui/react-components';
import { columnLetters } from '../../../sheet/address.js';
import { shortText } from '../../shared/shortText.js';
import { HeadingHelp } from './HeadingHelp.js';
import { type ColumnMatch, fieldNames } from './columnMatch.js';

const useStyles = makeStyles({
  summary: { cursor: 'pointer', padding: '4px 0' },
  table: { borderCollapse: 'collapse', width: '100%' },
  cell: {
    textAlign: 'start',
    padding: '3px 6px 3px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  letter: { color: tokens.colorNeutralForeground3 },
  heading: { overflowWrap: 'anywhere', fontWeight: 400 },
});

interface Props {
  matches: readonly ColumnMatch[];
  /** The column of the sheet, from 0, in which the list begins. */
  firstColumn: number;
  problem: string | undefined;
  onField: (at: number, field: string) => void;
}

/** What each column is taken for, and the way to say otherwise. */
export function ColumnMatches({ matches, firstColumn, problem, onField }: Props) {
  const styles = useStyles();
  const shown = matches.filter(({ heading }) => heading.trim() !== '');
  const read = shown.filter(({ field }) => field !== undefined).length;
  const guessed = shown.filter((match) => match.guessed).length;
  const renamed = shown.filter(({ rename }) => rename !== undefined).length;
  const says = [
    `${read} of ${shown.length} columns are read`,
    guessed > 0 ? `${guessed} guessed: look at ${guessed === 1 ? 'it' : 'them'}` : '',
    renamed > guessed ? `${renamed - guessed} chosen` : '',
  ];
  return (
    <>
      <details open={problem !== undefined || guessed > 0}>
        <summary className={styles.summary}>{says.filter((text) => text !== '').join(' · ')}</summary>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col" className={styles.cell}>
                Heading
              </th>
              <th scope="col" className={styles.cell}>
                Read as
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ at, heading, field, rename, guessed: isGuess }) => (
              <tr key={at}>
                <th scope="row" className={`${styles.cell} ${styles.heading}`}>
                  <span className={styles.letter}>{columnLetters(firstColumn + at)}</span>{' '}
                  {shortText(heading)}
                  {rename !== undefined && (
                    <div>
                      {isGuess ? 'guessed, ' : ''}to be renamed {shortText(rename)}
                    </div>
                  )}
                </th>
                <td className={styles.cell}>
                  <Select
                    size="small"
                    aria-label={`Column ${columnLetters(firstColumn + at)}, ${shortText(heading)}, is read as`}
                    value={field ?? ''}
                    onChange={(_, { value }) => onField(at, value)}
                  >
                    <option value="">not read</option>
                    {fieldNames.map((name) => (
                      <option key={name} value={name}>
                        {name}
                      </option>
                    ))}
                  </Select>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <HeadingHelp />
      {problem === undefined && !shown.some(({ field }) => field === 'Qty') && (
        <Text>No column is read as Qty, so every row counts as one piece.</Text>
      )}
    </>
  );
}
