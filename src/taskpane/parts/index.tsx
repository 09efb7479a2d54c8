import { MessageBar, MessageBarBody } from '@fluentui/react-components';
import { useMemo } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { type PartsView, useNavigation } from '../shared/navigation.js';
import type { ShopState } from '../shared/shopState.js';
import { starterNotice } from '../shop/sheet/starter.js';
import { starterShop } from '../shop/sheet/starterShop.js';
import { CheckList } from './list/CheckList.js';
import { TryOnePart } from './one/TryOnePart.js';
import { TabStrip } from '../shared/TabStrip.js';
import { stack } from '../shared/stack.js';

const views: readonly { key: PartsView; title: string }[] = [
  { key: 'one', title: 'Try one part' },
  { key: 'list', title: 'Check a list' },
];

/** The place where parts are checked against the presses: one part, or a whole list. */
export default function PartsPlace({ workbook, shop: state }: { workbook: Workbook; shop: ShopState }) {
  const { open, partsView } = useNavigation();
  const shop = useMemo(() => (state.kind === 'ready' ? state.shop : starterShop('in')), [state]);
  return (
    <>
      <TabStrip
        small
        label="One part or a list"
        tabs={views}
        selected={partsView}
        panel="parts-view"
        onSelect={(view) => open('parts', view)}
      />
      {state.kind !== 'ready' && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            {state.kind === 'broken' ? 'The shop cannot be read' : 'There is no shop sheet yet'}, so parts are
            checked against two invented presses. {starterNotice}
          </MessageBarBody>
        </MessageBar>
      )}
      <div id="parts-view" role="tabpanel" aria-labelledby={`parts-view-${partsView}`} style={stack(12)}>
        {partsView === 'one' ? (
          <TryOnePart shop={shop} hasSheet={state.kind === 'ready'} />
        ) : (
          <CheckList workbook={workbook} shop={shop} state={state} />
        )}
      </div>
    </>
  );
}
