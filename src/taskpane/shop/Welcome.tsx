import { Button, Radio, RadioGroup, Subtitle2, Text } from '@fluentui/react-components';
import { useState } from 'react';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import { useNavigation } from '../shared/navigation.js';
import { addShopSheet } from './sheet/addShopSheet.js';
import { stack } from '../shared/stack.js';
import { PaneField } from '../shared/PaneField.js';

/** The first screen of a workbook without a shop. */
export function Welcome({ workbook }: { workbook: Workbook }) {
  const [unit, setUnit] = useState<LengthUnit>('in');
  const propose = usePropose();
  const { open } = useNavigation();
  const add = () => propose({ title: 'Add shop sheet', make: () => addShopSheet(workbook, unit) });
  return (
    <>
      <Subtitle2 as="h1" style={{ margin: 0 }}>
        Will it run on your presses?
      </Subtitle2>
      <Text>
        Check one part or a whole list. Nothing is written until you say yes. Starter presses are invented:
        replace them before quoting.
      </Text>
      <PaneField label="A number without a unit is in">
        <RadioGroup
          layout="horizontal"
          value={unit}
          onChange={(_, { value }) => setUnit(value as LengthUnit)}
        >
          <Radio value="in" label="Inches" />
          <Radio value="mm" label="Millimetres" />
        </RadioGroup>
      </PaneField>
      <div style={{ ...stack(8), maxWidth: 280 }}>
        <Button appearance="primary" onClick={add}>
          Add shop sheet
        </Button>
        <Button onClick={() => open('parts', 'one')}>Try one part</Button>
        <Button onClick={() => open('parts', 'list')}>Check this list</Button>
      </div>
    </>
  );
}
