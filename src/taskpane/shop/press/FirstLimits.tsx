import { Input, Select, Text } from '@fluentui/react-components';
import type { ChangeEvent } from 'react';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { PaneField } from '../../shared/PaneField.js';
import { forceUnits, type NewPressAnswers } from './newPressAnswers.js';

type Key = Exclude<keyof NewPressAnswers, 'more'>;

interface Props {
  answer: (key: Key) => {
    value: string;
    onChange: (event: ChangeEvent<HTMLInputElement | HTMLSelectElement>, data: { value: string }) => void;
  };
  /** What is wrong with an answer, as its field shows it. */
  field: (key: Key) => { validationMessage?: string; validationState?: 'error' };
  lengthUnit: (key: 'punchThroat' | 'punchLargestHole' | 'punchLargestHoleThickness') => string;
}

/** The values that these fields ask for. */
export const firstItems: readonly PressItemKey[] = [
  'punchForce',
  'punchThroat',
  'punchLargestHole',
  'punchLargestHoleThickness',
];

const half = { flex: '1 1 120px', alignContent: 'start' };

/** Punch force, throat, and the largest hole through its thickness. */
export function FirstLimits({ answer, field, lengthUnit }: Props) {
  return (
    <>
      <PaneField label="2. Punch force" {...field('force')}>
        <div style={{ display: 'flex', gap: 6 }}>
          <Input
            aria-label="Punch force"
            data-field="punchForce"
            style={{ flex: '1 1 80px', minWidth: 0 }}
            {...answer('force')}
          />
          <Select aria-label="Unit of the force" {...answer('forceUnit')}>
            {forceUnits.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </Select>
        </div>
      </PaneField>
      <PaneField
        label={`3. Throat, ${lengthUnit('punchThroat')}`}
        hint="from the punch center to the frame"
        {...field('throat')}
      >
        <Input data-field="punchThroat" {...answer('throat')} />
      </PaneField>
      <Text id="largest-hole" weight="regular">
        4. Largest hole, through which thickness
      </Text>
      <div
        role="group"
        aria-labelledby="largest-hole"
        style={{ display: 'flex', gap: 12, flexWrap: 'wrap', alignItems: 'start' }}
      >
        <PaneField label={`Hole, ${lengthUnit('punchLargestHole')}`} style={half} {...field('largestHole')}>
          <Input data-field="punchLargestHole" style={{ minWidth: 0 }} {...answer('largestHole')} />
        </PaneField>
        <PaneField
          label={`Through, ${lengthUnit('punchLargestHoleThickness')}`}
          style={half}
          {...field('thickness')}
        >
          <Input data-field="punchLargestHoleThickness" style={{ minWidth: 0 }} {...answer('thickness')} />
        </PaneField>
      </div>
    </>
  );
}
