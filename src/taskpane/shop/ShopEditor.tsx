import { Tab, TabList } from '@fluentui/react-components';
import { useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { GradeList } from './lists/GradeList.js';
import { SettingsForm } from './lists/SettingsForm.js';
import { ToolList } from './lists/ToolList.js';
import { PressList } from './press/PressList.js';
import type { ReadyShop } from './readyShop.js';
import { stack } from '../shared/stack.js';

const parts = {
  presses: { title: 'Presses', Part: PressList },
  tools: { title: 'Tools', Part: ToolList },
  grades: { title: 'Grades', Part: GradeList },
  settings: { title: 'Settings', Part: SettingsForm },
};
type PartKey = keyof typeof parts;

/** The four tables of the shop, one at a time. */
export function ShopEditor({ workbook, shop }: { workbook: Workbook; shop: ReadyShop }) {
  const [key, setKey] = useState<PartKey>('presses');
  const { Part } = parts[key];
  return (
    <>
      <TabList
        size="small"
        aria-label="Parts of the shop"
        selectedValue={key}
        onTabSelect={(_, { value }) => setKey(value as PartKey)}
      >
        {Object.entries(parts).map(([value, { title }]) => (
          <Tab key={value} value={value} id={`shop-${value}`} aria-controls="shop-part">
            {title}
          </Tab>
        ))}
      </TabList>
      <div id="shop-part" role="tabpanel" aria-labelledby={`shop-${key}`} style={stack(12)}>
        <Part workbook={workbook} shop={shop} />
      </div>
    </>
  );
}
