import { Button, Input, Subtitle2, Text } from '@fluentui/react-components';
import { useState } from 'react';
import { useKept } from '../../shared/useKept.js';
import { shortText } from '../../shared/shortText.js';
import { usePropose } from '../../shared/change/useChange.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { appendColumn } from '../sheet/tableCells.js';
import {
  type AnswerProblems,
  answerProblems,
  copiedCells,
  forceUnits,
  newPressCells,
  type NewPressAnswers,
} from './newPressAnswers.js';
import { FirstLimits } from './FirstLimits.js';
import { itemOf, unitOf } from './pressFields.js';
import { stack } from '../../shared/stack.js';
import { PaneField } from '../../shared/PaneField.js';

interface Props extends ShopPartProps {
  /** The press whose values the new one takes. */
  copyOf?: string;
  onAdded: (name: string) => void;
  onCancel: () => void;
}

/** The four things a new press is asked first. */
export function NewPress({ workbook, shop, copyOf, onAdded, onCancel }: Props) {
  const propose = usePropose();
  const table = shop.tables.presses;
  const { unit } = shop.shop;
  const {
    value: answers,
    set: setAnswers,
    forget,
  } = useKept<NewPressAnswers>('new press', () => ({
    name: '',
    force: '',
    forceUnit: String(unitOf(table, itemOf('punchForce')) ?? forceUnits[0]),
    throat: '',
    largestHole: '',
    thickness: '',
  }));
  const [asked, setAsked] = useState(false);
  const all = answerProblems(answers, table, unit);
  const problems = copyOf === undefined ? all : nameOnly(all);
  const answer = (key: keyof NewPressAnswers) => ({
    value: answers[key],
    onChange: (_: unknown, { value }: { value: string }) => setAnswers({ ...answers, [key]: value }),
  });
  const field = (key: keyof NewPressAnswers) => {
    const shown = asked || answers[key] !== '' ? problems[key] : undefined;
    return shown === undefined
      ? {}
      : { validationMessage: shortText(shown, 300), validationState: 'error' as const };
  };
  const lengthUnit = (key: 'punchThroat' | 'punchLargestHole' | 'punchLargestHoleThickness') =>
    String(unitOf(table, itemOf(key)) || unit);
  const add = () => {
    setAsked(true);
    if (Object.keys(problems).length > 0) return;
    const name = answers.name.trim();
    const title = `Add press ${shortText(name)}`;
    const cells = copyOf === undefined ? newPressCells(answers, table) : copiedCells(table, copyOf);
    const written = () => {
      forget();
      onAdded(name);
    };
    const make = async () => {
      const steps = await appendColumn(workbook, table, name, cells);
      return typeof steps === 'string' ? steps : { title, steps, written };
    };
    propose({ title, make });
  };
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
        {copyOf === undefined ? 'New press' : `A copy of ${shortText(copyOf, 30)}`}
      </Subtitle2>
      <Text>
        {copyOf === undefined
          ? 'Four things from its plate. What you leave blank is not known, and rows that need it are Not checked.'
          : `Every value of ${shortText(copyOf, 30)} is copied. Give the copy a name of its own, then change what differs.`}
      </Text>
      <PaneField label={copyOf === undefined ? '1. Name' : 'Name'} required {...field('name')}>
        <Input {...answer('name')} />
      </PaneField>
      {copyOf === undefined && <FirstLimits {...{ answer, field, lengthUnit }} />}
      <div style={{ display: 'flex', gap: 8 }}>
        <Button appearance="primary" type="submit">
          Add press
        </Button>
        <Button
          onClick={() => {
            forget();
            onCancel();
          }}
        >
          Cancel
        </Button>
      </div>
    </form>
  );
}

/** A copy is asked its name only. */
function nameOnly({ name }: AnswerProblems): AnswerProblems {
  return name === undefined ? {} : { name };
}
