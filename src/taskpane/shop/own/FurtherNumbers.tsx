import { Button, Input, makeStyles, Select, tokens } from '@fluentui/react-components';
import { type PressItem, type PressItemKey, pressItemMeaning } from '../../../core/press/item/pressItem.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable } from '../../shared/shopState.js';
import { stack } from '../../shared/stack.js';
import type { NewPressAnswers } from '../press/newPressAnswers.js';
import { choices } from '../press/pressChoices.js';
import { itemOf, unitOf } from '../press/pressFields.js';

const useStyles = makeStyles({
  title: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
  line: { display: 'flex', gap: '6px' },
  input: { flex: '1 1 80px', minWidth: 0 },
});

type More = NonNullable<NewPressAnswers['more']>;

interface Props {
  items: readonly PressItemKey[];
  table: ShopTable;
  unit: LengthUnit;
  more: More;
  problems: Readonly<Partial<Record<PressItemKey, string>>>;
  onMore: (more: More) => void;
}

/** The numbers of the press, beyond the first four, that the part needs. */
export function FurtherNumbers({ items, table, unit, more, problems, onMore }: Props) {
  const styles = useStyles();
  if (items.length === 0) return null;
  return (
    <section aria-label="What this part needs to know about the press" style={stack(8)}>
      <h3 className={styles.title}>Press numbers this part needs</h3>
      {items.map((key) => (
        <Further
          key={key}
          item={itemOf(key)}
          unitText={String(unitOf(table, itemOf(key)) ?? '')}
          unit={unit}
          text={more[key] ?? ''}
          problem={problems[key]}
          onText={(text) => onMore({ ...more, [key]: text })}
        />
      ))}
    </section>
  );
}

interface FurtherProps {
  item: PressItem;
  unitText: string;
  unit: LengthUnit;
  text: string;
  problem: string | undefined;
  onText: (text: string) => void;
}

function Further({ item, unitText, unit, text, problem, onText }: FurtherProps) {
  const styles = useStyles();
  const words = choices[item.kind];
  return (
    <PaneField
      label={unitText === '' || words ? item.name : `${item.name}, ${unitText}`}
      hint={pressItemMeaning(item, unit)}
      {...(problem === undefined
        ? {}
        : { validationMessage: shortText(problem, 300), validationState: 'error' as const })}
    >
      {words ? (
        <Select data-field={item.key} value={text} onChange={(_, { value }) => onText(value)}>
          <option value="">Not known</option>
          {words.map((word) => (
            <option key={word}>{word}</option>
          ))}
        </Select>
      ) : (
        <ValueOrNone {...{ item, text, onText }} className={styles.line} inputClass={styles.input} />
      )}
    </PaneField>
  );
}

type ValueProps = Pick<FurtherProps, 'item' | 'text' | 'onText'> & {
  className: string;
  inputClass: string;
};

/** What the field around it says of the input is passed on to the input. */
function ValueOrNone({ item, text, onText, className, inputClass, ...fromField }: ValueProps) {
  return (
    <div className={className}>
      <Input
        {...fromField}
        data-field={item.key}
        className={inputClass}
        value={text}
        onChange={(_, { value }) => onText(value)}
      />
      <Button aria-label={`${item.name}: no limit`} onClick={() => onText('none')}>
        No limit
      </Button>
    </div>
  );
}
