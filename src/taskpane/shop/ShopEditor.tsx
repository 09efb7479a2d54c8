import { useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { GradeList } from './lists/GradeList.js';
import { SettingsForm } from './lists/SettingsForm.js';
import { ToolList } from './lists/ToolList.js';
import { PressList } from './press/PressList.js';
import type { ReadyShop } from './readyShop.js';
import { TabStrip } from '../shared/TabStrip.js';
import { stack } from '../shared/stack.js';

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
  const [key, setKey] = useState<PartKey>('presses');
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
        <Part workbook={workbook} shop={shop} />
      </div>
    </>
  );
}
