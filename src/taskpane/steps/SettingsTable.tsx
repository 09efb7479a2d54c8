import { makeStyles, tokens } from '@fluentui/react-components';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { wayWords } from '../../core/say/stepWords.js';
import type { OperatorStep } from '../../core/work/operatorStep.js';
import { captionStyle } from '../shared/captionStyle.js';

const useStyles = makeStyles({
  table: { borderCollapse: 'collapse', width: '100%' },
  cell: {
    textAlign: 'start',
    verticalAlign: 'top',
    // Words stay whole in a narrow pane.
    overflowWrap: 'normal',
    padding: '4px 8px 4px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

/** The settings of fence and stop in their order, by the numbers that the drawing has in circles. */
export function SettingsTable({ settings, unit }: { settings: readonly OperatorStep[]; unit: LengthUnit }) {
  const styles = useStyles();
  const length = (mm: number | undefined) => (mm === undefined ? '' : formatLength(mm, unit));
  return (
    <table className={styles.table}>
      <caption style={captionStyle}>Settings from the punch center, {unit}</caption>
      <thead>
        <tr>
          {['Setting', 'Stop', 'Fence', 'Hits', 'Way round'].map((heading) => (
            <th key={heading} scope="col" className={styles.cell}>
              {heading}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {settings.map((step) => (
          <tr key={step.setting}>
            <th scope="row" className={styles.cell}>
              {step.setting}
            </th>
            <td className={styles.cell}>
              {length(step.stopMm)} {step.stopSide}
            </td>
            <td className={styles.cell}>{length(step.fenceMm)}</td>
            <td className={styles.cell}>{step.hits}</td>
            <td className={styles.cell}>{wayWords(step)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
