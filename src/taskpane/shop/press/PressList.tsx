import { Button, Text } from '@fluentui/react-components';
import { stack } from '../../shared/stack.js';
import { useFocusedView } from '../../shared/useFocusedView.js';
import { useKept } from '../../shared/useKept.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { CapacitySheetPanel } from './CapacitySheetPanel.js';
import { NewPress } from './NewPress.js';
import { PressCard } from './PressCard.js';
import { PressForm } from './PressForm.js';

type Open =
  | { kind: 'cards' }
  | { kind: 'new'; copyOf?: string }
  | { kind: 'press'; name: string }
  | { kind: 'capacity'; name: string };

/** The presses as cards; one of them, or a new one, as a form. */
export function PressList(props: ShopPartProps) {
  const { value: open, set: setOpen } = useKept<Open>('open press', () => ({ kind: 'cards' }));
  const view = useFocusedView<HTMLDivElement>(JSON.stringify(open));
  return (
    <div ref={view} style={stack(12)}>
      <PressView {...props} open={open} setOpen={setOpen} />
    </div>
  );
}

type PressViewProps = ShopPartProps & { open: Open; setOpen: (open: Open) => void };

function PressView({ open, setOpen, ...props }: PressViewProps) {
  const { shop } = props;
  const close = () => setOpen({ kind: 'cards' });
  if (open.kind === 'new')
    return (
      <NewPress
        {...props}
        {...(open.copyOf !== undefined && { copyOf: open.copyOf })}
        onCancel={close}
        onAdded={(name) => setOpen({ kind: 'press', name })}
      />
    );
  const press = open.kind === 'press' ? shop.shop.presses.find(({ name }) => name === open.name) : undefined;
  if (press)
    return (
      <PressForm
        key={press.name}
        {...props}
        name={press.name}
        onClose={close}
        onRenamed={(name) => setOpen({ kind: 'press', name })}
        onCopy={() => setOpen({ kind: 'new', copyOf: press.name })}
      />
    );
  const drawn = open.kind === 'capacity' && shop.shop.presses.find(({ name }) => name === open.name);
  if (drawn)
    return <CapacitySheetPanel workbook={props.workbook} shop={shop.shop} press={drawn} onClose={close} />;
  return (
    <>
      {shop.shop.presses.length === 0 && <Text>The shop has no press yet.</Text>}
      {shop.shop.presses.map((each, at) => (
        <PressCard
          key={`${each.name} ${at}`}
          press={each}
          table={shop.tables.presses}
          onEdit={() => setOpen({ kind: 'press', name: each.name })}
          onCapacity={() => setOpen({ kind: 'capacity', name: each.name })}
        />
      ))}
      <Button appearance="primary" style={{ justifySelf: 'start' }} onClick={() => setOpen({ kind: 'new' })}>
        New press
      </Button>
    </>
  );
}
