import { useContext, useEffect, useState } from 'react';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { focusField } from '../../shared/focusField.js';
import { KeptContext } from '../../shared/useKept.js';
import { foldGroups, shownItems } from './folds.js';
import type { Fields } from './mergeFields.js';
import { keptPlaces } from './useGoToPressItem.js';

/** The item that something led to, once; its field takes the keyboard. */
export function useWantedItem(fieldOf: (key: PressItemKey) => string): PressItemKey | undefined {
  const entries = useContext(KeptContext);
  const [wanted] = useState(() => entries.get(keptPlaces.item) as PressItemKey | undefined);
  const field = wanted && fieldOf(wanted);
  useEffect(() => {
    entries.delete(keptPlaces.item);
    if (field !== undefined) focusField(field);
  }, [entries, field]);
  return wanted;
}

/** The item whose field is there for an item: its station, where that is not there. */
export function fieldShown(key: PressItemKey, mine: Fields): string {
  const folds = foldGroups.flatMap((group) => group.folds);
  const fold = folds.find(({ items }) => items.some((item) => item.key === key));
  const shown = fold ? shownItems(fold, (name) => String(mine[name] ?? '')) : [];
  return shown.find((item) => item.key === key)?.key ?? shown[0]?.key ?? key;
}
