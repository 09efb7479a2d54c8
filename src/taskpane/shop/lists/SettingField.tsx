import { Input, Select } from '@fluentui/react-components';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import { settingChoices, settingHint } from './settingWords.js';

interface Props {
  name: string;
  value: string;
  /** Why it cannot be read. */
  problem: string | undefined;
  onValue: (value: string) => void;
}

/** One setting: what it is, what a blank one stands for, and what it says. */
export function SettingField({ name, value, problem, onValue }: Props) {
  const words = settingChoices(name);
  return (
    <PaneField
      label={name}
      hint={settingHint(name)}
      {...(problem === undefined
        ? {}
        : { validationMessage: shortText(problem, 300), validationState: 'error' as const })}
    >
      {words ? (
        <Select value={value} onChange={(_, data) => onValue(data.value)}>
          {[...new Set(['', ...words, value])].map((word) => (
            <option key={word} value={word}>
              {word === '' ? 'blank' : word}
            </option>
          ))}
        </Select>
      ) : (
        <Input value={value} onChange={(_, data) => onValue(data.value)} />
      )}
    </PaneField>
  );
}
