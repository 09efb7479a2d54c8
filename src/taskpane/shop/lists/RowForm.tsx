import { Button, Input, MessageBar, MessageBarBody, Select } from '@fluentui/react-components';
import { useEffect, useRef } from 'react';
import { shortText } from '../../shared/shortText.js';
import type { ListColumn } from './listColumn.js';
import { stack } from '../../shared/stack.js';
import { PaneField } from '../../shared/PaneField.js';

interface Props {
  title: string;
  columns: readonly ListColumn[];
  /** What the row says now. */
  values: readonly string[];
  /** What is typed. */
  typed: readonly string[];
  onTyped: (typed: readonly string[]) => void;
  /** Why the row cannot be read; undefined for a good one. */
  problem: (values: readonly string[]) => string | undefined;
  onSave: (values: readonly string[]) => void;
  onCancel: () => void;
}

/** One row of a list as a form. */
export function RowForm({ title, columns, values, typed, onTyped, problem, onSave, onCancel }: Props) {
  const untouched = typed.every((text, at) => text === values[at]);
  const wrong = untouched ? undefined : problem(typed);
  const set = (at: number, text: string) => onTyped(typed.map((each, index) => (index === at ? text : each)));
  const heading = useRef<HTMLHeadingElement>(null);
  // The button that opened the form is gone with it: the keyboard goes on here.
  useEffect(() => heading.current?.focus(), []);
  return (
    <form
      aria-label={title}
      noValidate
      style={stack(10)}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem(typed) === undefined) onSave(typed);
      }}
    >
      <h2 ref={heading} tabIndex={-1} style={{ margin: 0, fontSize: 16 }}>
        {title}
      </h2>
      {columns.map(({ heading: label, hint, choices }, at) => (
        <PaneField key={label} label={label} {...(hint === undefined ? {} : { hint })}>
          {choices ? (
            <Select value={typed[at] ?? ''} onChange={(_, { value }) => set(at, value)}>
              {[...new Set(['', ...choices, typed[at] ?? ''])].map((choice) => (
                <option key={choice} value={choice}>
                  {choice === '' ? 'blank' : choice}
                </option>
              ))}
            </Select>
          ) : (
            <Input value={typed[at] ?? ''} onChange={(_, { value }) => set(at, value)} />
          )}
        </PaneField>
      ))}
      {wrong !== undefined && (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{shortText(wrong, 300)}</MessageBarBody>
        </MessageBar>
      )}
      <div style={{ display: 'flex', gap: 8 }}>
        <Button appearance="primary" type="submit" disabled={untouched || wrong !== undefined}>
          Save
        </Button>
        <Button onClick={onCancel}>Cancel</Button>
      </div>
    </form>
  );
}
