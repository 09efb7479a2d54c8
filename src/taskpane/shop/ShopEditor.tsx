import { MessageBar, MessageBarBody } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import { counted } from '../shared/change/describeStep.js';
import { shortText } from '../shared/shortText.js';
import { GradeList } from './lists/GradeList.js';
import { SettingsForm } from './lists/SettingsForm.js';
import { ToolList } from './lists/ToolList.js';
import { PressList } from './press/PressList.js';
import type { ReadyShop } from './sheet/readyShop.js';
import { TabStrip } from '../shared/TabStrip.js';
import { stack } from '../shared/stack.js';
import { useKept } from '../shared/useKept.js';

const parts = {
  presses: { title: 'Presses', Part: PressList },
  tools: { title: 'Tools', Part: ToolList },
  grades: { title: 'Grades', Part: GradeList },
  settings: { title: 'Settings', Part: SettingsForm },
};
type PartKey = keyof typeof parts;
const tabs = (Object.keys(parts) as PartKey[]).map((key) => ({ key, title: parts[key].title }));

/** The four tables of the shop, one at a time. */
export function ShopEditor({ workbook, shop }: { workbook: Workbook; shop: ReadyShop }) {
  const { value: key, set: setKey } = useKept<PartKey>('part of the shop', () => 'presses');
  const { Part } = parts[key];
  return (
    <>
      <TabStrip
        small
        label="Parts of the shop"
        tabs={tabs}
        selected={key}
        panel="shop-part"
        onSelect={setKey}
      />
      <div id="shop-part" role="tabpanel" aria-labelledby={`shop-part-${key}`} style={stack(12)}>
        <NotUsed rows={shop.shop.unknownRows} />
        <Part workbook={workbook} shop={shop} />
      </div>
    </>
  );
}

/** Rows of the shop's tables that nothing reads: most often a name that is not quite right. */
function NotUsed({ rows }: { rows: readonly string[] }) {
  if (rows.length === 0) return null;
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>
        {counted(rows.length, 'row is', 'rows are')} not used, because no item or setting has this name:{' '}
        {shortText(rows.join('; '), 300)}. Correct the name on the sheet, or leave it as a note of yours.
      </MessageBarBody>
    </MessageBar>
  );
}
