import { Button, Input, Select } from '@fluentui/react-components';
import { useRef } from 'react';
import { type PressItem, pressItemMeaning } from '../../../core/press/item/pressItem.js';
import { forceReading } from '../../../core/quantity/readForce.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { FieldConflict } from './mergeFields.js';
import { shortText } from '../../shared/shortText.js';
import { type FieldState, fieldState, FieldStateMark, fieldStateWords } from './FieldState.js';
import { choices } from './pressChoices.js';
import { PaneField } from '../../shared/PaneField.js';

interface Props {
  item: PressItem;
  label: string;
  unit: string;
  /** What the shop's numbers are in. */
  shopUnit: LengthUnit;
  text: string;
  problem: string | undefined;
  conflict: FieldConflict | undefined;
  onText: (text: string) => void;
}

/** One value of a press: what it is, what it says, and whether that is a limit, none, or not known. */
export function PressField({ item, label, unit, shopUnit, text, problem, conflict, onText }: Props) {
  const words = choices[item.kind];
  const reading = item.kind === 'force' ? forceReading(text, unit, shopUnit) : undefined;
  return (
    <PaneField
      label={unit === '' || words ? label : `${label}, ${unit}`}
      hint={pressItemMeaning(item, shopUnit)}
      {...(problem === undefined
        ? reading === undefined
          ? {}
          : { validationMessage: `Read as ${reading}`, validationState: 'none' as const }
        : { validationMessage: shortText(problem, 300), validationState: 'error' as const })}
    >
      {words ? (
        <Select data-field={item.key} value={text.toLowerCase()} onChange={(_, { value }) => onText(value)}>
          <option value="">Not known</option>
          {words.map((word) => (
            <option key={word} value={word}>
              {word}
            </option>
          ))}
          {!words.includes(text.toLowerCase()) && text !== '' && (
            <option value={text.toLowerCase()}>{text}</option>
          )}
        </Select>
      ) : (
        <LimitInput {...{ item, label, text, onText }} />
      )}
      {conflict && <Conflict conflict={conflict} onText={onText} />}
    </PaneField>
  );
}

function LimitInput({
  item,
  label,
  text,
  onText,
  ...fromField
}: Pick<Props, 'item' | 'label' | 'text' | 'onText'>) {
  const input = useRef<HTMLInputElement>(null);
  const state = fieldState(text);
  const words = fieldStateWords(item);
  const choose = (next: FieldState) => {
    onText(next === 'none' ? 'none' : next === 'value' && state === 'value' ? text : '');
    if (next === 'value') input.current?.focus();
  };
  return (
    <div style={{ display: 'flex', gap: 6, alignItems: 'center' }}>
      <FieldStateMark state={state} />
      <Input
        {...fromField}
        input={{ ref: input }}
        data-field={item.key}
        style={{ flex: '1 1 90px', minWidth: 0 }}
        value={text}
        onChange={(_, { value }) => onText(value)}
      />
      <Select
        aria-label={`${label}: ${`${words.value}, ${words.none} or ${words.unknown}`.toLowerCase()}`}
        style={{ flex: '0 0 112px' }}
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
  );
}

export function Conflict({
  conflict: { theirs },
  onText,
}: {
  conflict: FieldConflict;
  onText: (text: string) => void;
}) {
  const now = String(theirs ?? '');
  return (
    <div
      role="status"
      style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap', fontSize: 12 }}
    >
      <span>Meanwhile the sheet says {now === '' ? 'nothing' : shortText(now)}.</span>
      <Button size="small" onClick={() => onText(now)}>
        Take the sheet&apos;s
      </Button>
    </div>
  );
}
