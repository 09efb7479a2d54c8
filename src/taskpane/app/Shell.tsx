import { Spinner, Text } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import { useShop } from '../shared/useShop.js';

export function Shell({ workbook }: { workbook: Workbook }) {
  const shop = useShop(workbook);
  if (shop.kind === 'loading') return <Spinner label="Reading the shop" />;
  return <Text>{shop.kind === 'ready' ? shop.shop.stamp : 'This workbook has no shop sheet yet.'}</Text>;
}
