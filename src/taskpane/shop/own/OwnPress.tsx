import { Input, makeStyles, Text, tokens } from '@fluentui/react-components';
import { useDeferredValue, useMemo, useState } from 'react';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { type PartCells, checkPart } from '../../parts/one/checkPart.js';
import { neededOf } from '../../parts/one/needed.js';
import { PartInputs } from '../../parts/one/PartInputs.js';
import { PressResult } from '../../parts/one/PressResult.js';
import { unreadInputs } from '../../parts/one/unreadInputs.js';
import { sentencesOf } from '../../../core/say/sentencesOf.js';
import { focusField } from '../../shared/focusField.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable, ShopTablesRead } from '../../shared/shopState.js';
import { stack } from '../../shared/stack.js';
import { firstItems, FirstLimits } from '../press/FirstLimits.js';
import { type AnswerProblems, moreProblems, type NewPressAnswers } from '../press/newPressAnswers.js';
import { itemOf, unitOf } from '../press/pressFields.js';
import { FurtherNumbers } from './FurtherNumbers.js';
import { ownShop } from './ownShop.js';

const useStyles = makeStyles({
  title: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
});

type Answer = Exclude<keyof NewPressAnswers, 'more'>;

interface Props {
  unit: LengthUnit;
  table: ShopTable;
  /** The tables of the shop, where there is one. */
  tables?: ShopTablesRead;
  answers: NewPressAnswers;
  onAnswers: (answers: NewPressAnswers) => void;
  /** What is wrong with the answers; what is blank is told only once it was asked for. */
  problems: AnswerProblems;
  wasAsked: boolean;
  part: PartCells;
  onPart: (part: PartCells) => void;
}

/** One press by its name and four numbers, one part, and what comes of them while they are typed. */
export function OwnPress(props: Props) {
  const { unit, table, tables, answers, onAnswers, problems, wasAsked, part, onPart } = props;
  const styles = useStyles();
  const answer = (key: Answer) => ({
    value: answers[key],
    onChange: (_: unknown, { value }: { value: string }) => onAnswers({ ...answers, [key]: value }),
  });
  const field = (key: Answer) => {
    const shown = wasAsked || answers[key] !== '' ? problems[key] : undefined;
    return shown === undefined
      ? {}
      : { validationMessage: shortText(shown, 300), validationState: 'error' as const };
  };
  const lengthUnit = (key: 'punchThroat' | 'punchLargestHole' | 'punchLargestHoleThickness') =>
    String(unitOf(table, itemOf(key)) || unit);
  const typed = useDeferredValue(answers);
  const cells = useDeferredValue(part);
  const shop = useMemo(
    () => ownShop(typed, table, { unit, ...(tables ? { tables } : {}) }),
    [typed, table, unit, tables],
  );
  const checked = useMemo(() => checkPart(cells, shop)[0], [cells, shop]);
  const result = checked && !checked.result.blank ? checked.result : undefined;
  const unread = result ? unreadInputs([result]) : [];
  const needed = useRemembered(
    result ? neededOf(result.findings).items.filter((key) => !firstItems.includes(key)) : [],
  );
  const goToItem = (key: PressItemKey) => focusField(key);
  return (
    <>
      <PaneField label="1. Name" required {...field('name')}>
        <Input {...answer('name')} />
      </PaneField>
      <FirstLimits {...{ answer, field, lengthUnit }} />
      <h3 className={styles.title}>One part to try on it</h3>
      <PartInputs unit={unit} part={part} onChange={onPart} />
      <div role="status" style={stack(8)}>
        {unread.length > 0 && (
          <Text>
            {sentencesOf(unread, unit)
              .map((each) => shortText(each, 300))
              .join(' ')}
          </Text>
        )}
        {checked && result ? (
          <PressResult
            {...{ press: checked.press, result, work: checked.work, unread, unit, goToItem }}
            currency={shop.settings.settings.currency}
            isInvented={false}
            goToCell={focusField}
          />
        ) : (
          <Text>Give the part a section and a grade.</Text>
        )}
      </div>
      <FurtherNumbers
        items={needed}
        {...{ table, unit }}
        more={answers.more ?? {}}
        problems={moreProblems(answers, table, unit)}
        onMore={(more) => onAnswers({ ...answers, more })}
      />
    </>
  );
}

/** What was needed once stays in its place while it is filled in. */
function useRemembered(items: readonly PressItemKey[]): readonly PressItemKey[] {
  const [seen, setSeen] = useState<readonly PressItemKey[]>([]);
  const fresh = items.filter((key) => !seen.includes(key));
  if (fresh.length > 0) setSeen([...seen, ...fresh]);
  return fresh.length > 0 ? [...seen, ...fresh] : seen;
}
