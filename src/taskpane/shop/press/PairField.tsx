import { Input, makeStyles, Select } from '@fluentui/react-components';
import type { PressItem } from '../../../core/press/item/pressItem.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable } from '../../shared/shopState.js';
import { type FieldState, fieldState, FieldStateMark, fieldStateWords } from './FieldState.js';
import type { Fold } from './folds.js';
import type { FieldConflict } from './mergeFields.js';
import { Conflict } from './PressField.js';
import { unitOf } from './pressFields.js';

const useStyles = makeStyles({
  line: { display: 'flex', gap: '4px', alignItems: 'center' },
  input: { flex: '1 1 44px', minWidth: 0 },
  state: { flex: '0 0 128px', minWidth: 0 },
});

interface Props {
  /** The two items. */
  line: readonly PressItem[];
  fold: Fold;
  table: ShopTable;
  text: (item: string) => string;
  problems: Readonly<Record<string, string | undefined>>;
  conflicts: readonly FieldConflict[];
  onText: (item: string, text: string) => void;
  /** Which of the two has the keyboard. */
  onItem: (key: string) => void;
}

/** Two sizes of one thing on a line: `1-1/4 × 9/16`; a limit, none, or not known, they are together. */
export function PairField({ line, fold, table, text, problems, conflicts, onText, onItem }: Props) {
  const styles = useStyles();
  const [first, second] = line;
  if (!first || !second) return null;
  const states = line.map(({ name }) => fieldState(text(name)));
  const state = states.find((each) => each !== states[0]) === undefined ? (states[0] ?? 'unknown') : 'value';
  const words = fieldStateWords(first);
  const unit = (item: PressItem) => String(unitOf(table, item) ?? '');
  const title = `${fold.label(first)} × ${fold.label(second).toLowerCase()}`;
  const choose = (next: FieldState) => {
    for (const { name } of line)
      onText(
        name,
        next === 'none' ? 'none' : next === 'value' && fieldState(text(name)) === 'value' ? text(name) : '',
      );
  };
  const wrong = line.flatMap(({ name }) => problems[name] ?? []);
  return (
    <PaneField
      label={`${title}, ${unit(first)}`}
      hint={line.map(({ meaning }) => meaning).join('; ')}
      {...(wrong.length === 0
        ? {}
        : { validationMessage: shortText(wrong.join(' '), 300), validationState: 'error' as const })}
    >
      <div>
        <div role="group" aria-label={title} className={styles.line}>
          <FieldStateMark state={state} />
          {line.map((item, at) => (
            <span key={item.key} style={{ display: 'contents' }}>
              {at > 0 && <span aria-hidden>×</span>}
              <Input
                className={styles.input}
                data-field={item.key}
                aria-label={`${fold.label(item)}, ${unit(item)}`}
                aria-invalid={problems[item.name] !== undefined}
                value={text(item.name)}
                onFocus={(event) => {
                  event.stopPropagation();
                  onItem(item.key);
                }}
                onChange={(_, { value }) => onText(item.name, value)}
              />
            </span>
          ))}
          <Select
            aria-label={`${title}: ${`${words.value}, ${words.none} or ${words.unknown}`.toLowerCase()}`}
            className={styles.state}
            value={state}
            onChange={(_, { value }) => choose(value as FieldState)}
          >
            {Object.entries(words).map(([key, word]) => (
              <option key={key} value={key}>
                {word}
              </option>
            ))}
          </Select>
        </div>
        {conflicts
          .filter(({ field }) => line.some(({ name }) => name === field))
          .map((conflict) => (
            <Conflict
              key={conflict.field}
              conflict={conflict}
              onText={(typed) => onText(conflict.field, typed)}
            />
          ))}
      </div>
    </PaneField>
  );
}
