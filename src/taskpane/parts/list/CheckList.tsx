import { Button, MessageBar, MessageBarBody, Select, Spinner, Text } from '@fluentui/react-components';
import { useMemo, useState } from 'react';
import type { Shop } from '../../../core/shop/readShop.js';
import type { Workbook } from '../../../workbook/port.js';
import type { ShopState } from '../../shared/shopState.js';
import { shortText } from '../../shared/shortText.js';
import { headingRowOf } from './listSource.js';
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
  const { list, choose, takeSelection } = useList(workbook, state);
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
        <Button onClick={takeSelection}>Take the selection</Button>
      </div>
      {source ? (
        <ChosenList key={`${source.key} ${source.area.sheet}`} {...{ workbook, shop, state, list }} />
      ) : (
        <MessageBar layout="multiline">
          <MessageBarBody>
            There is no list here yet. Select the cells of a parts list, its headings included, and press Take
            the selection.
          </MessageBarBody>
        </MessageBar>
      )}
    </>
  );
}

const offeredRows = 15;

function ChosenList({ workbook, shop, state, list }: Props & { list: ListOnSheet }) {
  const { source, area, values } = list;
  const [picked, setPicked] = useState<number>();
  const isTable = source?.table !== undefined;
  const headingRow = isTable ? 0 : (picked ?? headingRowOf(values));
  const read = useMemo(
    () =>
      source && area && values.length > headingRow ? listFrom(source, area, values, headingRow) : undefined,
    [source, area, values, headingRow],
  );
  if (!area || !read) return <Text>These cells are empty.</Text>;
  return (
    <>
      {!isTable && (
        <PaneField label="Row with the headings">
          <Select value={String(headingRow)} onChange={(_, { value }) => setPicked(Number(value))}>
            {values.slice(0, offeredRows).map((row, at) => (
              <option key={at} value={at}>
                {area.row + at + 1}:{' '}
                {shortText(row.filter((cell) => cell !== null && cell !== '').join(', '), 50) || 'blank'}
              </option>
            ))}
          </Select>
        </PaneField>
      )}
      <ListChecker key={headingRow} {...{ workbook, shop, state }} list={read} />
    </>
  );
}
