import { Button, MessageBar, MessageBarBody, Select, Spinner, Text } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import type { Workbook } from '../../../workbook/port.js';
import type { ShopState } from '../../shared/shopState.js';
import { where } from '../../shared/change/describeStep.js';
import { shortText } from '../../shared/shortText.js';
import { headingRowOf } from './headingRow.js';
import { listFrom } from './listRead.js';
import { ListChecker } from './ListChecker.js';
import { type ListOnSheet, useList } from './useList.js';
import { PaneField } from '../../shared/PaneField.js';

interface Props {
  workbook: Workbook;
  shop: Shop;
  state: ShopState;
}

/** Which list, and which of its rows has the headings. */
export function CheckList({ workbook, shop, state }: Props) {
  const { list, refusal, choose, takeSelection } = useList(workbook, state);
  if (!list) return <Spinner label="Looking for lists" />;
  const { source } = list;
  return (
    <>
      <div style={{ display: 'flex', gap: 8, alignItems: 'end', flexWrap: 'wrap' }}>
        {source && (
          <PaneField label="List" style={{ flex: '1 1 160px' }}>
            <Select value={source.key} onChange={(_, { value }) => choose(value)}>
              {list.sources.map(({ key, title }) => (
                <option key={key} value={key}>
                  {shortText(title)}
                </option>
              ))}
            </Select>
          </PaneField>
        )}
        <Button onClick={takeSelection}>Use selected cells</Button>
        <div role="status" style={refusal === undefined ? {} : { flex: '1 1 100%' }}>
          {refusal !== undefined && (
            <MessageBar intent="warning" layout="multiline">
              <MessageBarBody>{shortText(refusal, 200)}</MessageBarBody>
            </MessageBar>
          )}
        </div>
      </div>
      {source ? (
        <ChosenList
          key={source.table ? source.key : where(source.area)}
          {...{ workbook, shop, state, list }}
        />
      ) : (
        <MessageBar layout="multiline">
          <MessageBarBody>
            There is no list here yet. Select the cells of a parts list, its headings included, and press Use
            selected cells.
          </MessageBarBody>
        </MessageBar>
      )}
    </>
  );
}

function ChosenList({ workbook, shop, state, list }: Props & { list: ListOnSheet }) {
  const { source, area, values, shown, checks, arrangement } = list;
  const [picked, setPicked] = useState<number>();
  const isTable = source?.table !== undefined;
  const headingRow = isTable ? 0 : (picked ?? headingRowOf(values));
  const read = useMemo(() => {
    if (!source || !area || values.length <= headingRow) return undefined;
    return { ...listFrom(source, area, values, headingRow), arrangement, ...(checks && { checks }) };
  }, [source, area, values, headingRow, checks, arrangement]);
  if (!area || !read) return <Text>These cells are empty.</Text>;
  return (
    <>
      {!isTable && (
        <PaneField label="Row with the headings">
          <Select value={String(headingRow)} onChange={(_, { value }) => setPicked(Number(value))}>
            {shown.map((row, at) => (
              <option key={at} value={at}>
                {area.row + at + 1}: {shortText(row.filter((text) => text !== '').join(', '), 50) || 'blank'}
              </option>
            ))}
          </Select>
        </PaneField>
      )}
      <ListChecker key={headingRow} {...{ workbook, shop, state }} list={read} />
    </>
  );
}
