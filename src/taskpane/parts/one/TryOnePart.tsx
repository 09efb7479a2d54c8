import { Button, makeStyles, MessageBar, MessageBarBody, Text } from '@fluentui/react-components';
import { useDeferredValue, useMemo } from 'react';
import { echoOf } from '../../../core/say/noteOf.js';
import { sentencesOf } from '../../../core/say/sentencesOf.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { isInvented } from '../../../core/press/isInvented.js';
import { useGoToPressItem } from '../../shop/press/useGoToPressItem.js';
import { useKept } from '../../shared/useKept.js';
import { shortText } from '../../shared/shortText.js';
import { checkPart, type PartCells } from './checkPart.js';
import { type PartField, partFields } from './partFields.js';
import { PartInputs } from './PartInputs.js';
import { PressResult } from './PressResult.js';
import { unreadInputs } from './unreadInputs.js';
import { focusField } from '../../shared/focusField.js';
import { stack } from '../../shared/stack.js';

const useStyles = makeStyles({
  results: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fill, minmax(min(240px, 100%), 1fr))',
    gap: '8px',
  },
});

/** One part, typed as in a list, against every press at once. Nothing is written. */
export function TryOnePart({ shop, hasSheet }: { shop: Shop; hasSheet: boolean }) {
  const styles = useStyles();
  const { value: part, set: setPart } = useKept<PartCells>('one part', () => ({}));
  const checked = useDeferredValue(part);
  const goToItem = useGoToPressItem();
  const results = useMemo(() => checkPart(checked, shop), [checked, shop]);
  const asked = (part['Section'] ?? '').trim() !== '' && (part['Grade'] ?? '').trim() !== '';
  const shown = results.flatMap(({ press, result, work }) => (result.blank ? [] : { press, result, work }));
  const [one] = shown;
  const unread = unreadInputs(shown.map(({ result }) => result));
  const invented = new Set(shop.presses.filter(isInvented).map(({ name }) => name));
  return (
    <>
      <PartInputs unit={shop.unit} part={part} onChange={setPart} />
      <div role="status" style={stack(8)}>
        {!asked && (
          <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
            <Text>Give at least a section and a grade.</Text>
            <Button size="small" onClick={() => setPart(exampleOf(partFields(shop.unit).first))}>
              Fill in an example
            </Button>
          </div>
        )}
        {asked && shop.presses.length === 0 && <Text>The shop has no press yet.</Text>}
        {asked && unread.length > 0 && <Unread sentences={sentencesOf(unread, shop.unit)} />}
        {asked && (
          <div className={styles.results}>
            {shown.map(({ press, result, work }, at) => (
              <PressResult
                key={`${press} ${at}`}
                {...{ press, result, work, unread }}
                isInvented={invented.has(press)}
                goToCell={focusField}
                {...(hasSheet ? { goToItem: (key) => goToItem(press, key) } : {})}
                unit={shop.unit}
                currency={shop.settings.settings.currency}
              />
            ))}
          </div>
        )}
        {asked && one && <Text size={200}>{shortText(echoOf(one.result.readings, shop.unit), 400)}</Text>}
      </div>
    </>
  );
}

/** What is to be put right before any press can say something to the part. */
function Unread({ sentences }: { sentences: readonly string[] }) {
  return (
    <MessageBar intent="error" layout="multiline">
      <MessageBarBody>
        {sentences.map((each) => (
          <div key={each}>{shortText(each, 300)}</div>
        ))}
      </MessageBarBody>
    </MessageBar>
  );
}

function exampleOf(fields: readonly PartField[]): PartCells {
  return Object.fromEntries(fields.map(({ heading, example }) => [heading, example.split(', ')[0] ?? '']));
}
