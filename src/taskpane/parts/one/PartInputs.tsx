import { Input, makeStyles, Select } from '@fluentui/react-components';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { PaneField } from '../../shared/PaneField.js';
import type { PartCells } from './checkPart.js';
import { cutByHeading, cutByWords, type PartField, partFields } from './partFields.js';

const useStyles = makeStyles({
  fields: { display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(88px, 1fr))', gap: '8px' },
  whole: { gridColumn: '1 / -1' },
  wide: { gridColumn: 'span 2' },
  more: { cursor: 'pointer', padding: '4px 0' },
});

interface Props {
  unit: LengthUnit;
  part: PartCells;
  onChange: (part: PartCells) => void;
}

/** The cells of one part, by the headings of a list; what few parts need is folded away. */
export function PartInputs({ unit, part, onChange }: Props) {
  const styles = useStyles();
  const { first, more } = partFields(unit);
  const set = (heading: string, value: string) => onChange({ ...part, [heading]: value });
  const field = ({ heading, example, width }: PartField) => (
    <PaneField key={heading} label={heading} className={width === undefined ? '' : styles[width]}>
      {heading === cutByHeading ? (
        <Select
          data-field={heading}
          style={{ minWidth: 0 }}
          value={part[heading] ?? ''}
          onChange={(_, { value }) => set(heading, value)}
        >
          {Object.entries(cutByWords).map(([word, shown]) => (
            <option key={word} value={word}>
              {shown}
            </option>
          ))}
        </Select>
      ) : (
        <Input
          data-field={heading}
          style={{ minWidth: 0 }}
          placeholder={example}
          value={part[heading] ?? ''}
          onChange={(_, { value }) => set(heading, value)}
        />
      )}
    </PaneField>
  );
  return (
    <>
      <div className={styles.fields}>{first.map(field)}</div>
      <details>
        <summary className={styles.more}>Pitch, gage, miters, corners, notches, bends</summary>
        <div className={styles.fields}>{more.map(field)}</div>
      </details>
    </>
  );
}
