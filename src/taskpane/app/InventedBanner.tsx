import { Button, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import { listWords } from '../../core/say/listWords.js';
import { useNavigation } from '../shared/navigation.js';
import { shortText } from '../shared/shortText.js';
import type { ShopState } from '../shared/shopState.js';
import { inventedPresses } from '../shop/sheet/replaceInvented.js';

/** Says in every place which presses are invented, until each is confirmed or removed. */
export function InventedBanner({ shop, isInShop }: { shop: ShopState; isInShop: boolean }) {
  const { open } = useNavigation();
  if (shop.kind !== 'ready') return null;
  const names = inventedPresses(shop.tables.presses);
  if (names.length === 0) return null;
  const shown = listWords(names.map((name) => shortText(name, 30)));
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>
        {shown} {names.length === 1 ? 'is an invented press' : 'are invented presses'}: do not quote from{' '}
        {names.length === 1 ? 'it' : 'them'}. Replace, confirm or remove {names.length === 1 ? 'it' : 'them'}.
      </MessageBarBody>
      {!isInShop && (
        <MessageBarActions>
          <Button size="small" onClick={() => open('shop')}>
            Go to Shop
          </Button>
        </MessageBarActions>
      )}
    </MessageBar>
  );
}
