import { Button, makeStyles, Text, tokens } from '@fluentui/react-components';
import { sentenceInCell } from '../../../core/inputError.js';
import { type Press, pressValue } from '../../../core/press/press.js';
import { type PressItem, pressItems } from '../../../core/press/item/pressItem.js';
import { forceReading } from '../../../core/quantity/readForce.js';
import { counted } from '../../shared/change/describeStep.js';
import type { ShopTable } from '../../shared/shopState.js';
import { shortText } from '../../shared/shortText.js';
import { VerdictMark } from '../../shared/VerdictMark.js';
import { inventedNotice, isStarter } from '../sheet/starter.js';
import { fieldState, FieldStateMark } from './FieldState.js';
import { fieldsOf, itemOf, unitOf, unitOfTable } from './pressFields.js';
import { useUnsaved } from './usePressFields.js';

const useStyles = makeStyles({
  card: {
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    padding: '10px 12px',
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr)',
    gap: '6px',
  },
  head: { display: 'flex', justifyContent: 'space-between', alignItems: 'center', gap: '8px' },
  limits: { margin: 0 },
  limit: {
    display: 'grid',
    gridTemplateColumns: '92px minmax(0, 1fr)',
    columnGap: '8px',
    paddingBlock: '1px',
  },
  value: { margin: 0, display: 'flex', gap: '6px', alignItems: 'center' },
});

interface Props {
  press: Press;
  table: ShopTable;
  onEdit: () => void;
  onCapacity: () => void;
}

const stations = ['punch', 'flatShear', 'angleShear', 'barShear', 'notcher', 'bend'] as const;
const keyLimits = [
  { label: 'Punch force', keys: ['punchForce'] },
  { label: 'Throat', keys: ['punchThroat'] },
  { label: 'Largest hole', keys: ['punchLargestHole', 'punchLargestHoleThickness'] },
  { label: 'Longest bar', keys: ['longestBar'] },
] as const;

/** A press at a glance: its stations, its key limits, and what is not complete. */
export function PressCard({ press, table, onEdit, onCapacity }: Props) {
  const styles = useStyles();
  const fields = fieldsOf(table, press.name);
  const unsaved = useUnsaved(press.name);
  const has = stations.filter((key) => {
    const value = pressValue(press, key);
    return value.state === 'value' && value.value === 1;
  });
  const bad = pressItems.filter(({ key }) => pressValue(press, key).state === 'bad').length;
  const limit = (item: PressItem) => {
    const text = fields[item.name] ?? '';
    const unit = unitOf(table, item);
    const reading = item.kind === 'force' ? forceReading(text, unit, unitOfTable(table)) : undefined;
    return {
      state: fieldState(text),
      text: shown(text, String(unit ?? '')) + (reading === undefined ? '' : `, read as ${reading}`),
    };
  };
  const unknown = stations.filter((key) => pressValue(press, key).state === 'unknown').length;
  return (
    <section className={styles.card} aria-label={`Press ${shortText(press.name)}`}>
      <div className={styles.head}>
        <Text as="h2" weight="semibold" size={400} style={{ margin: 0 }}>
          {shortText(press.name)}
        </Text>
        <span style={{ display: 'flex', gap: 6 }}>
          <Button size="small" onClick={onCapacity} aria-label={`Capacity sheet of ${shortText(press.name)}`}>
            Capacity
          </Button>
          <Button size="small" onClick={onEdit} aria-label={`Edit ${shortText(press.name)}`}>
            Edit
          </Button>
        </span>
      </div>
      <Text>{has.length > 0 ? has.map((key) => itemOf(key).name).join(' · ') : 'No station said yet'}</Text>
      <dl className={styles.limits}>
        {keyLimits.map(({ label, keys }) => {
          const [first, through] = keys.map((key) => limit(itemOf(key)));
          return (
            <div key={label} className={styles.limit}>
              <dt>{label}</dt>
              <dd className={styles.value}>
                <FieldStateMark state={first?.state ?? 'unknown'} />
                {through?.state === 'value' ? `${first?.text} through ${through.text}` : first?.text}
              </dd>
            </div>
          );
        })}
      </dl>
      {unsaved > 0 && <Mark text={`${counted(unsaved, 'value')} typed but not saved: Edit`} />}
      {press.problem !== undefined && <Mark text={sentenceInCell(press.problem)} />}
      {bad > 0 && <Mark text={`Incomplete: ${counted(bad, 'cell')} cannot be read`} />}
      {unknown > 0 && <Mark text={`${counted(unknown, 'station')} not known`} />}
      {isStarter(press.name, (name) => fields[name] ?? '') && <Mark text={inventedNotice} />}
    </section>
  );
}

function shown(text: string, unit: string): string {
  const state = fieldState(text);
  if (state === 'unknown') return 'not known';
  if (state === 'none') return 'no limit';
  return shortText(/\d$/.test(text) && unit !== '' ? `${text} ${unit}` : text);
}

function Mark({ text }: { text: string }) {
  return (
    <div style={{ display: 'flex', gap: 6, alignItems: 'center' }}>
      <VerdictMark verdict="Not checked" />
      <Text>{shortText(text, 200)}</Text>
    </div>
  );
}
