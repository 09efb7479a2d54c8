import { makeStyles, Spinner, tokens } from '@fluentui/react-components';
import { Suspense, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { ChangeHost } from '../shared/change/ChangeHost.js';
import { NavigationContext, type PartsView, type PlaceKey } from '../shared/navigation.js';
import { TabStrip } from '../shared/TabStrip.js';
import { useCheckedLists } from '../shared/useCheckedLists.js';
import { KeptContext, type KeptEntries } from '../shared/useKept.js';
import { useShop } from '../shared/useShop.js';
import { Caution } from './Caution.js';
import { ErrorBoundary } from './ErrorBoundary.js';
import { InventedBanner } from './InventedBanner.js';
import { places } from './places.js';
import { ShopBanner } from './ShopBanner.js';
import { StatusLine } from './StatusLine.js';

const useStyles = makeStyles({
  pane: {
    display: 'flex',
    flexDirection: 'column',
    minHeight: '100%',
    minWidth: 0,
    overflowWrap: 'anywhere',
  },
  place: {
    padding: '12px',
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr)',
    gap: '12px',
    alignContent: 'start',
    flexGrow: 1,
  },
  tabs: { borderBottom: `1px solid ${tokens.colorNeutralStroke2}`, padding: '0 4px' },
});

/** The places as tabs, with what is true of the whole workbook above them. */
export function Shell({ workbook }: { workbook: Workbook }) {
  const styles = useStyles();
  const shop = useShop(workbook);
  const lists = useCheckedLists(workbook);
  const [kept] = useState<KeptEntries>(() => new Map());
  const [chosen, setChosen] = useState<PlaceKey>();
  const [chosenView, setChosenView] = useState<PartsView>();
  const open = (place: PlaceKey, view?: PartsView) => {
    setChosen(place);
    if (view) setChosenView(view);
  };
  if (shop.kind === 'loading' || !lists)
    return <Spinner label="Reading the workbook" style={{ padding: 24 }} />;
  const current = chosen ?? (shop.kind === 'ready' ? 'parts' : 'shop');
  const partsView = chosenView ?? (lists.length > 0 ? 'list' : 'one');
  // Where the pane opens is decided once: adding the shop sheet or checks does not lead away from where one is.
  if (chosen === undefined) setChosen(current);
  if (chosenView === undefined) setChosenView(partsView);
  const place = places.find(({ key }) => key === current);
  return (
    <NavigationContext.Provider value={{ open, partsView }}>
      <section className={styles.pane} aria-label="Tonrow">
        <StatusLine shop={shop} lists={lists} />
        <div className={styles.tabs}>
          <TabStrip label="Places" tabs={places} selected={current} panel="place" onSelect={open} />
        </div>
        <ChangeHost workbook={workbook}>
          <ShopBanner workbook={workbook} shop={shop} lists={lists} />
          <InventedBanner shop={shop} isInShop={current === 'shop'} />
          <div id="place" role="tabpanel" aria-labelledby={`place-${current}`} className={styles.place}>
            <ErrorBoundary key={current}>
              <Suspense fallback={<Spinner label={`Opening ${place?.title ?? ''}`} />}>
                <KeptContext.Provider value={kept}>
                  {place && <place.Component workbook={workbook} shop={shop} />}
                </KeptContext.Provider>
              </Suspense>
            </ErrorBoundary>
          </div>
        </ChangeHost>
        <Caution />
      </section>
    </NavigationContext.Provider>
  );
}
