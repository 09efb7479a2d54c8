import { Button, Input, Select, Subtitle2, Text } from '@fluentui/react-components';
import { useState } from 'react';
import { shortText } from '../../shared/shortText.js';
import { usePropose } from '../../shared/change/useChange.js';
import type { ShopPartProps } from '../readyShop.js';
import { appendColumn } from '../sheet/tableCells.js';
import { answerProblems, forceUnits, newPressCells, type NewPressAnswers } from './newPressAnswers.js';
import { itemOf, unitOf } from './pressFields.js';
import { stack } from '../../shared/stack.js';
import { PaneField } from '../../shared/PaneField.js';

interface Props extends ShopPartProps {
  onAdded: (name: string) => void;
  onCancel: () => void;
}

/** The four things a new press is asked first. */
export function NewPress({ workbook, shop, onAdded, onCancel }: Props) {
  const propose = usePropose();
  const table = shop.tables.presses;
  const { unit } = shop.shop;
  const [answers, setAnswers] = useState<NewPressAnswers>({
    name: '',
    force: '',
    forceUnit: String(unitOf(table, itemOf('punchForce')) ?? forceUnits[0]),
    throat: '',
    largestHole: '',
    thickness: '',
  });
  const [asked, setAsked] = useState(false);
  const problems = answerProblems(answers, table, unit);
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
    const make = async () => {
      const steps = await appendColumn(workbook, table, name, newPressCells(answers, table));
      return typeof steps === 'string' ? steps : { title, steps, written: () => onAdded(name) };
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
        New press
      </Subtitle2>
      <Text>
        Four things from its plate. What you leave blank is not known, and rows that need it are Not checked.
      </Text>
      <PaneField label="1. Name" required {...field('name')}>
        <Input {...answer('name')} />
      </PaneField>
      <PaneField label="2. Punch force" {...field('force')}>
        <div style={{ display: 'flex', gap: 6 }}>
          <Input aria-label="Punch force" style={{ flex: '1 1 80px', minWidth: 0 }} {...answer('force')} />
          <Select aria-label="Unit of the force" {...answer('forceUnit')}>
            {forceUnits.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </Select>
        </div>
      </PaneField>
      <PaneField
        label={`3. Throat, ${lengthUnit('punchThroat')}`}
        hint="from the punch centre to the frame"
        {...field('throat')}
      >
        <Input {...answer('throat')} />
      </PaneField>
      <Text id="largest-hole" weight="regular">
        4. Largest hole, through which thickness
      </Text>
      <div role="group" aria-labelledby="largest-hole" style={{ display: 'flex', gap: 12, flexWrap: 'wrap' }}>
        <PaneField
          label={`Hole, ${lengthUnit('punchLargestHole')}`}
          style={{ flex: '1 1 120px' }}
          {...field('largestHole')}
        >
          <Input style={{ minWidth: 0 }} {...answer('largestHole')} />
        </PaneField>
        <PaneField
          label={`Through, ${lengthUnit('punchLargestHoleThickness')}`}
          style={{ flex: '1 1 120px' }}
          {...field('thickness')}
        >
          <Input style={{ minWidth: 0 }} {...answer('thickness')} />
        </PaneField>
      </div>
      <div style={{ display: 'flex', gap: 8 }}>
        <Button appearance="primary" type="submit">
          Add press
        </Button>
        <Button onClick={onCancel}>Cancel</Button>
      </div>
    </form>
  );
}
