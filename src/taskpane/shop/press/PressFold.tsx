import { Accordion, AccordionHeader, AccordionItem, AccordionPanel, Text } from '@fluentui/react-components';
import { useState } from 'react';
import type { PressItem } from '../../../core/press/item/pressItem.js';
import type { FieldConflict, Fields } from './mergeFields.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { counted } from '../../shared/change/describeStep.js';
import type { ShopTable } from '../../shared/shopState.js';
import { type Fold, isInvented, linesOf, shownItems } from './folds.js';
import { PairField } from './PairField.js';
import { StationSketch } from './sketch/StationSketch.js';
import { PressField } from './PressField.js';
import { unitOf } from './pressFields.js';
import { stack } from '../../shared/stack.js';

interface Props {
  fold: Fold;
  table: ShopTable;
  /** What the shop's numbers are in. */
  unit: LengthUnit;
  mine: Fields;
  problems: Readonly<Record<string, string | undefined>>;
  conflicts: readonly FieldConflict[];
  onText: (field: string, text: string) => void;
  /** Begins open. */
  isOpen: boolean;
}

/** The values of one station, folded away behind what they amount to. */
export function PressFold({ fold, table, unit, mine, problems, conflicts, onText, isOpen }: Props) {
  const text = (name: string) => String(mine[name] ?? '');
  const [focused, setFocused] = useState<string>();
  const station = fold.items.find(({ kind }) => kind === 'station');
  const shown = shownItems(fold, text);
  const field = (item: PressItem) => (
    <PressField
      key={item.key}
      item={item}
      label={fold.label(item)}
      unit={String(unitOf(table, item) ?? '')}
      shopUnit={unit}
      text={text(item.name)}
      problem={problems[item.name]}
      conflict={conflicts.find(({ field: of }) => of === item.name)}
      onText={(typed) => onText(item.name, typed)}
    />
  );
  return (
    <Accordion collapsible defaultOpenItems={isOpen ? [fold.title] : []}>
      <AccordionItem value={fold.title}>
        <AccordionHeader as="h4" size="small">
          {fold.title}: {summaryOf(fold, text, problems)}
        </AccordionHeader>
        <AccordionPanel style={{ ...stack(12), marginInline: 4 }}>
          {fold.note !== undefined && <Text>{fold.note}</Text>}
          {station && shown.length > 1 && <StationSketch station={station.key} focused={focused} />}
          {linesOf(shown).map((line) => (
            <div key={line[0]?.key} onFocus={() => setFocused(line[0]?.key)}>
              {line.length === 2 ? (
                <PairField
                  {...{ line, fold, table, text, problems, conflicts, onText }}
                  onItem={setFocused}
                />
              ) : (
                line.map(field)
              )}
            </div>
          ))}
        </AccordionPanel>
      </AccordionItem>
    </Accordion>
  );
}

/** `no`, `not known`, or how many of its values are known, with what is invented or cannot be read. */
function summaryOf({ items }: Fold, text: (name: string) => string, problems: Props['problems']): string {
  const bad = items.filter(({ name }) => problems[name] !== undefined).length;
  if (bad > 0) return `${counted(bad, 'value')} cannot be read`;
  const station = items.find(({ kind }) => kind === 'station');
  const word = station ? text(station.name).toLowerCase() : 'yes';
  if (word !== 'yes') return word === '' ? 'not known' : 'none on this press';
  const values = items.filter((item) => item !== station);
  const blank = values.filter(({ name }) => text(name) === '');
  const invented = blank.filter(({ key }) => isInvented(key)).length;
  if (invented > 0) return `${invented} of ${values.length} invented`;
  const unknown = blank.filter(({ whenBlank }) => whenBlank === undefined).length;
  if (values.length === 0) return 'yes';
  if (unknown === 0) return values.length === 1 ? 'known' : `all ${values.length} known`;
  return unknown === values.length ? 'not known' : `${unknown} of ${values.length} not known`;
}
