import {
  Button,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  Subtitle2,
  Text,
  tokens,
} from '@fluentui/react-components';
import { shortText } from '../../shared/shortText.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { usePropose } from '../../shared/change/useChange.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { appendRows } from '../sheet/tableCells.js';
import { inventedItem, inventedNotice, isStarter, starterUnit } from '../sheet/starter.js';
import { FoldGroup } from './FoldGroup.js';
import type { Fields } from './mergeFields.js';
import { fieldShown, useWantedItem } from './useWantedItem.js';
import { PressActions } from './PressActions.js';
import { PressFold } from './PressFold.js';
import { foldGroups } from './folds.js';
import { changedCells, fieldsOf, problemOf, unitOfTable } from './pressFields.js';
import { usePressFields } from './usePressFields.js';
import { pressItems } from '../../../core/press/item/pressItem.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { Step } from '../../../workbook/step.js';
import { stack } from '../../shared/stack.js';

interface Props extends ShopPartProps {
  name: string;
  onClose: () => void;
  onRenamed: (name: string) => void;
  onCopy: () => void;
}

const useStyles = makeStyles({
  /** In sight wherever one is in the form. */
  save: {
    position: 'sticky',
    bottom: 0,
    zIndex: 1,
    display: 'flex',
    gap: '8px',
    alignItems: 'center',
    flexWrap: 'wrap',
    paddingBlock: '8px',
    backgroundColor: tokens.colorNeutralBackground1,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

/** The values of one press, folded by station. Saving writes the changed cells only. */
export function PressForm({ workbook, shop, name, onClose, onRenamed, onCopy }: Props) {
  const styles = useStyles();
  const propose = usePropose();
  const table = shop.tables.presses;
  const { mine, base, changed, taken, conflicts, type, discard } = usePressFields(
    name,
    fieldsOf(table, name),
  );
  const problems = Object.fromEntries(
    pressItems.map((item) => [
      item.name,
      problemOf(String(mine[item.name] ?? ''), item, table, name, shop.shop.unit),
    ]),
  );
  const wrong = changed.filter((field) => problems[field] !== undefined);
  const wanted = useWantedItem((item) => fieldShown(item, mine));
  const write = (title: string, after: Fields) => {
    const { steps, missing } = changedCells(table, name, base, after);
    propose({ title, make: async () => withSteps(title, steps, await rowsFor(missing)) });
  };
  const save = () => write(`Change ${shortText(name)}`, mine);
  const confirm = () =>
    write(`Say that the numbers of ${shortText(name, 30)} are its own`, { ...base, [inventedItem]: 'no' });
  const rowsFor = async (missing: Record<string, string>): Promise<Step[] | string> => {
    const headings = table.values[0] ?? [];
    const rows = pressItems
      .filter((item) => missing[item.name] !== undefined)
      .map((item) =>
        headings.map((heading) =>
          cellOfNewRow(String(heading), item, name, missing[item.name] ?? '', unitOfTable(table)),
        ),
      );
    return rows.length === 0 ? [] : appendRows(workbook, table, rows);
  };
  return (
    <form
      aria-label={`Press ${shortText(name)}`}
      noValidate
      style={stack(12)}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div style={{ display: 'flex', justifyContent: 'space-between', alignItems: 'center', gap: 8 }}>
        <Subtitle2 as="h2" style={{ margin: 0 }}>
          {shortText(name)}
        </Subtitle2>
        <Button onClick={onClose}>All presses</Button>
      </div>
      {taken.length > 0 && <Text role="status">Taken from the sheet meanwhile: {taken.join(', ')}.</Text>}
      {isStarter(name, (item) => String(mine[item] ?? '')) && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            {inventedNotice} Type the numbers of your own press over these, from its plate and manual, then
            press the button.
          </MessageBarBody>
          <MessageBarActions>
            <Button size="small" onClick={confirm}>
              These are its own numbers
            </Button>
          </MessageBarActions>
        </MessageBar>
      )}
      {foldGroups.map(({ title: of, folds, isFolded }) => (
        <FoldGroup key={of} title={of} isFolded={isFolded === true}>
          {folds.map((fold) => (
            <PressFold
              key={fold.title}
              {...{ fold, table, mine, problems, conflicts, onText: type }}
              unit={shop.shop.unit}
              isOpen={fold.items.some(({ key }) => key === wanted)}
            />
          ))}
        </FoldGroup>
      ))}
      <div className={styles.save}>
        <Button appearance="primary" type="submit" disabled={changed.length === 0 || wrong.length > 0}>
          {changed.length === 0
            ? 'Nothing changed'
            : `Save ${changed.length === 1 ? '1 value' : `${changed.length} values`}`}
        </Button>
        {changed.length > 0 && <Button onClick={discard}>Leave as on the sheet</Button>}
        {wrong.length > 0 && <Text role="status">Correct {wrong.join(', ')} first.</Text>}
      </div>
      <PressActions {...{ workbook, table, name, onRenamed, onCopy, onRemoved: onClose }} />
    </form>
  );
}

function withSteps(title: string, steps: Step[], added: Step[] | string): Proposal | string {
  return typeof added === 'string' ? added : { title, steps: [...steps, ...added] };
}

function cellOfNewRow(
  heading: string,
  item: (typeof pressItems)[number],
  press: string,
  text: string,
  unit: LengthUnit,
) {
  switch (heading.trim().toLowerCase()) {
    case 'item':
      return item.name;
    case 'unit':
      return starterUnit(item.kind, unit);
    case press.trim().toLowerCase():
      return text;
    default:
      return null;
  }
}
