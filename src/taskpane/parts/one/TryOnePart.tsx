import { Button, Input, makeStyles, MessageBar, MessageBarBody, Text } from '@fluentui/react-components';
import { useDeferredValue, useMemo } from 'react';
import { echoOf } from '../../../core/say/noteOf.js';
import { sentencesOf } from '../../../core/say/sentencesOf.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { useKept } from '../../shared/useKept.js';
import { shortText } from '../../shared/shortText.js';
import { checkPart, type PartCells } from './checkPart.js';
import { type PartField, partFields } from './partFields.js';
import { PressResult } from './PressResult.js';
import { unreadInputs } from './unreadInputs.js';
import { stack } from '../../shared/stack.js';
import { PaneField } from '../../shared/PaneField.js';

const useStyles = makeStyles({
  fields: { display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(88px, 1fr))', gap: '8px' },
  wide: { gridColumn: '1 / -1' },
  results: {
    display: 'grid',
    gridTemplateColumns: 'repeat(auto-fill, minmax(min(240px, 100%), 1fr))',
    gap: '8px',
  },
  more: { cursor: 'pointer', padding: '4px 0' },
});

/** One part, typed as in a list, against every press at once. Nothing is written. */
export function TryOnePart({ shop }: { shop: Shop }) {
  const styles = useStyles();
  const { value: part, set: setPart } = useKept<PartCells>('one part', () => ({}));
  const checked = useDeferredValue(part);
  const { first, more } = partFields(shop.unit);
  const results = useMemo(() => checkPart(checked, shop), [checked, shop]);
  const field = ({ heading, example }: PartField) => (
    <PaneField key={heading} label={heading} className={heading === 'Section' ? styles.wide : ''}>
      <Input
        style={{ minWidth: 0 }}
        placeholder={example}
        value={part[heading] ?? ''}
        onChange={(_, { value }) => setPart({ ...part, [heading]: value })}
      />
    </PaneField>
  );
  const asked = (part['Section'] ?? '').trim() !== '' && (part['Grade'] ?? '').trim() !== '';
  const shown = results.flatMap(({ press, result, work }) => (result.blank ? [] : { press, result, work }));
  const [one] = shown;
  const unread = unreadInputs(shown.map(({ result }) => result));
  return (
    <>
      <div className={styles.fields}>{first.map(field)}</div>
      <details>
        <summary className={styles.more}>Pitch, gage, miters, corners, notches, bends</summary>
        <div className={styles.fields}>{more.map(field)}</div>
      </details>
      <div role="status" style={stack(8)}>
        {!asked && (
          <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
            <Text>Give at least a section and a grade.</Text>
            <Button size="small" onClick={() => setPart(exampleOf(first))}>
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
