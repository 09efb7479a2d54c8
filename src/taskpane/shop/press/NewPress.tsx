import { Button, Checkbox, Input, Subtitle2, Text } from '@fluentui/react-components';
import { useState } from 'react';
import { plateToBegin } from '../../parts/one/partFields.js';
import { listWords } from '../../../core/say/listWords.js';
import { usePropose } from '../../shared/change/useChange.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import { stack } from '../../shared/stack.js';
import { useKept } from '../../shared/useKept.js';
import { addedPress } from '../own/addedPress.js';
import { OwnPress } from '../own/OwnPress.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { inventedPresses } from '../sheet/replaceInvented.js';
import {
  answerProblems,
  copiedCells,
  moreProblems,
  type NewPressAnswers,
  newPressCells,
  noAnswers,
} from './newPressAnswers.js';

interface Props extends ShopPartProps {
  /** The press whose values the new one takes. */
  copyOf?: string;
  onAdded: (name: string) => void;
  onCancel: () => void;
}

/** A new press by its name and four numbers, with a part to try on it; a copy is asked its name only. */
export function NewPress({ workbook, shop, copyOf, onAdded, onCancel }: Props) {
  const propose = usePropose();
  const table = shop.tables.presses;
  const { unit } = shop.shop;
  const kept = useKept<NewPressAnswers>('new press', () => noAnswers(table));
  const answers = kept.value;
  const part = useKept('one part', () => plateToBegin(unit));
  const invented = copyOf === undefined ? inventedPresses(table) : [];
  const [isReplacing, setReplacing] = useState(true);
  const [wasAsked, setAsked] = useState(false);
  const problems = answerProblems(answers, table, unit);
  const leave = (then: () => void) => () => {
    kept.forget();
    then();
  };
  const add = () => {
    setAsked(true);
    const wrong =
      copyOf === undefined
        ? { ...problems, ...moreProblems(answers, table, unit) }
        : problems.name === undefined
          ? {}
          : { name: problems.name };
    if (Object.keys(wrong).length > 0) return;
    const name = answers.name.trim();
    const cells = copyOf === undefined ? newPressCells(answers, table) : copiedCells(table, copyOf);
    propose(
      addedPress(workbook, {
        table,
        name,
        cells,
        isReplacing: isReplacing && copyOf === undefined,
        written: leave(() => onAdded(name)),
      }),
    );
  };
  const copy = copyOf === undefined ? undefined : shortText(copyOf, 30);
  return (
    <form
      aria-label="New press"
      noValidate
      style={stack(12)}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <Subtitle2 as="h2" style={{ margin: 0 }}>
        {copy === undefined ? 'New press' : `A copy of ${copy}`}
      </Subtitle2>
      <Text>
        {copy === undefined
          ? 'Its name and four numbers from its plate. Leave blank what you do not know: rows that need it are Not checked.'
          : `Every value of ${copy} is copied. Give the copy a name of its own, then change what differs.`}
      </Text>
      {copy === undefined ? (
        <OwnPress
          {...{ unit, table, answers, problems, wasAsked }}
          tables={shop.tables}
          onAnswers={kept.set}
          part={part.value}
          onPart={part.set}
        />
      ) : (
        <PaneField
          label="Name"
          required
          {...((wasAsked || answers.name !== '') && problems.name !== undefined
            ? { validationMessage: shortText(problems.name, 300), validationState: 'error' as const }
            : {})}
        >
          <Input value={answers.name} onChange={(_, { value: name }) => kept.set({ ...answers, name })} />
        </PaneField>
      )}
      {invented.length > 0 && (
        <Checkbox
          label={`Remove the invented ${invented.length === 1 ? 'press' : 'presses'} ${listWords(invented.map((each) => shortText(each, 30)))}`}
          checked={isReplacing}
          onChange={(_, { checked }) => setReplacing(checked === true)}
        />
      )}
      <div style={{ display: 'flex', gap: 8 }}>
        <Button appearance="primary" type="submit">
          Add press
        </Button>
        <Button onClick={leave(onCancel)}>Cancel</Button>
      </div>
    </form>
  );
}
