import { Link, makeStyles, Text } from '@fluentui/react-components';
import type { Verdict } from '../../../core/check/verdict.js';
import { type PressItemKey } from '../../../core/press/item/pressItem.js';
import { itemName } from '../../../core/press/limit.js';
import type { Needed } from './needed.js';

const useStyles = makeStyles({
  line: { display: 'flex', flexWrap: 'wrap', columnGap: '12px', rowGap: '2px', alignItems: 'baseline' },
});

interface Props {
  verdict: Verdict;
  needed: Needed;
  goToItem?: ((key: PressItemKey) => void) | undefined;
  goToCell: (heading: string) => void;
}

/** Which further numbers an OK waits for, each a link to its field. */
export function StillNeeded({ verdict, needed: { items, cells }, goToItem, goToCell }: Props) {
  const styles = useStyles();
  const links = [
    ...items.flatMap((key) => (goToItem ? [{ name: itemName(key), go: () => goToItem(key) }] : [])),
    ...cells.map((heading) => ({ name: heading, go: () => goToCell(heading) })),
  ];
  if (links.length === 0) return null;
  const isOpen = verdict === 'Not checked' || verdict === 'OK so far';
  return (
    <div className={styles.line}>
      <Text>{isOpen ? 'Still needed for an OK:' : 'Also not known:'}</Text>
      {links.map(({ name, go }) => (
        <Link key={name} inline onClick={go}>
          {name}
        </Link>
      ))}
    </div>
  );
}
