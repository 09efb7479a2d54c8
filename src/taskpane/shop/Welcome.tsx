import { Button, Radio, RadioGroup, Subtitle2, Text } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Workbook } from '../../workbook/port.js';
import { plateToBegin } from '../parts/one/partFields.js';
import { usePropose } from '../shared/change/useChange.js';
import { useNavigation } from '../shared/navigation.js';
import { PaneField } from '../shared/PaneField.js';
import { shortText } from '../shared/shortText.js';
import { stack } from '../shared/stack.js';
import { useKept } from '../shared/useKept.js';
import { OwnPress } from './own/OwnPress.js';
import { tableWithoutPresses } from './own/ownShop.js';
import { answerProblems, moreProblems, newPressCells, noAnswers } from './press/newPressAnswers.js';
import { addShopSheet } from './sheet/addShopSheet.js';

/** The first screen of a workbook without a shop: an own press and a part, or the invented presses to begin with. */
export function Welcome({ workbook }: { workbook: Workbook }) {
  const { value: unit, set: setUnit } = useKept<LengthUnit>('unit of a new shop', () => 'in');
  const propose = usePropose();
  const { open } = useNavigation();
  const add = () => propose({ title: 'Add shop sheet', make: () => addShopSheet(workbook, unit) });
  return (
    <>
      <Subtitle2 as="h1" style={{ margin: 0 }}>
        Will it run on your presses?
      </Subtitle2>
      <Text>
        Type a press and a part: the answer comes as you type. Nothing is written until you say yes.
      </Text>
      <PaneField label="A number without a unit is in">
        <RadioGroup
          layout="horizontal"
          value={unit}
          onChange={(_, { value }) => setUnit(value as LengthUnit)}
        >
          <Radio value="in" label="Inches" />
          <Radio value="mm" label="Millimeters" />
        </RadioGroup>
      </PaneField>
      <OwnFirst key={unit} workbook={workbook} unit={unit} />
      <section aria-label="Other ways to begin" style={{ ...stack(8), maxWidth: 320 }}>
        <Text>
          No press at hand? Begin with two that are made up. Starter presses are invented: replace them before
          quoting.
        </Text>
        <Button onClick={add}>Add shop sheet</Button>
        <Button onClick={() => open('parts', 'one')}>Try one part</Button>
        <Button onClick={() => open('parts', 'list')}>Check this list</Button>
      </section>
    </>
  );
}

function OwnFirst({ workbook, unit }: { workbook: Workbook; unit: LengthUnit }) {
  const propose = usePropose();
  const table = useMemo(() => tableWithoutPresses(unit), [unit]);
  const kept = useKept(`first press in ${unit}`, () => noAnswers(table));
  const answers = kept.value;
  const part = useKept(`part in ${unit}`, () => plateToBegin(unit));
  const [wasAsked, setAsked] = useState(false);
  const problems = answerProblems(answers, table, unit);
  const add = () => {
    setAsked(true);
    if (Object.keys({ ...problems, ...moreProblems(answers, table, unit) }).length > 0) return;
    const own = { name: answers.name.trim(), cells: newPressCells(answers, table) };
    const title = `Add shop sheet with ${shortText(own.name, 30)}`;
    propose({ title, make: () => addShopSheet(workbook, unit, own) });
  };
  return (
    <form
      aria-label="Your press"
      noValidate
      style={stack(12)}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <OwnPress
        {...{ unit, table, answers, problems, wasAsked }}
        onAnswers={kept.set}
        part={part.value}
        onPart={part.set}
      />
      <Button appearance="primary" type="submit" style={{ justifySelf: 'start' }}>
        Keep this press on a shop sheet
      </Button>
    </form>
  );
}
