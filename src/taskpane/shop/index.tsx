import { Text } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import type { ShopState } from '../shared/shopState.js';
import { ShopEditor } from './ShopEditor.js';
import { Welcome } from './Welcome.js';

/** The place where the shop's presses, tools, grades and settings are seen and edited. */
export default function ShopPlace({ workbook, shop }: { workbook: Workbook; shop: ShopState }) {
  if (shop.kind === 'none') return <Welcome workbook={workbook} />;
  if (shop.kind === 'ready') return <ShopEditor workbook={workbook} shop={shop} />;
  return <Text>The shop is shown here when its cell can be read again.</Text>;
}
