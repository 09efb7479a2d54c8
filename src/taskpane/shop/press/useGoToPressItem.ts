import { useContext } from 'react';
import type { PressItemKey } from '../../../core/press/item/pressItem.js';
import { useNavigation } from '../../shared/navigation.js';
import { KeptContext } from '../../shared/useKept.js';

/** What the place Shop opens with, where something led to it. */
export const keptPlaces = { part: 'part of the shop', press: 'open press', item: 'press item to go to' };

/** Leads to the field of a value of a press, in its form. */
export function useGoToPressItem(): (press: string, key: PressItemKey) => void {
  const entries = useContext(KeptContext);
  const { open } = useNavigation();
  return (name, key) => {
    entries.set(keptPlaces.part, 'presses');
    entries.set(keptPlaces.press, { kind: 'press', name });
    entries.set(keptPlaces.item, key);
    open('shop');
  };
}
