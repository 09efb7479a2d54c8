import { createContext, useContext } from 'react';

export type PlaceKey = 'shop' | 'parts' | 'stock' | 'steps' | 'handOff';
export type PartsView = 'one' | 'list';

export interface Navigation {
  /** Opens a place; in Parts, one of its two views. */
  open: (place: PlaceKey, view?: PartsView) => void;
  /** The view of Parts that was asked for. */
  partsView: PartsView;
}

export const NavigationContext = createContext<Navigation>({ open: () => undefined, partsView: 'one' });

export function useNavigation(): Navigation {
  return useContext(NavigationContext);
}
