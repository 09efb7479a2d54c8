import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { type KeyboardEvent, useRef } from 'react';

const useStyles = makeStyles({
  strip: { display: 'flex', flexWrap: 'wrap' },
  tab: {
    appearance: 'none',
    border: 'none',
    borderBottom: '3px solid transparent',
    backgroundColor: 'transparent',
    color: tokens.colorNeutralForeground2,
    font: 'inherit',
    fontSize: '14px',
    lineHeight: '20px',
    padding: '10px 10px 7px',
    cursor: 'pointer',
    '@media (forced-colors: active)': { borderBottomColor: 'Canvas' },
    ':hover': { color: tokens.colorNeutralForeground1, borderBottomColor: tokens.colorNeutralStroke1Hover },
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: '-2px' },
  },
  small: { padding: '6px 8px 4px' },
  selected: {
    color: tokens.colorNeutralForeground1,
    fontWeight: 600,
    borderBottomColor: tokens.colorCompoundBrandStroke,
    '@media (forced-colors: active)': { borderBottomColor: 'Highlight' },
  },
});

interface Props<Key extends string> {
  label: string;
  tabs: readonly { key: Key; title: string }[];
  selected: Key;
  /** The element that shows what the tabs choose; the ids of the tabs begin with it. */
  panel: string;
  small?: boolean;
  onSelect: (key: Key) => void;
}

/** Tabs: the arrow keys go along them, Enter and Space open one. */
export function TabStrip<Key extends string>({
  label,
  tabs,
  selected,
  panel,
  small = false,
  onSelect,
}: Props<Key>) {
  const styles = useStyles();
  const strip = useRef<HTMLDivElement>(null);
  const move = (event: KeyboardEvent) => {
    const buttons = [...(strip.current?.querySelectorAll<HTMLElement>('[role=tab]') ?? [])];
    const at = buttons.indexOf(event.target as HTMLElement);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: buttons.length - 1 }[event.key];
    if (to === undefined || at < 0) return;
    event.preventDefault();
    buttons[(to + buttons.length) % buttons.length]?.focus();
  };
  return (
    <div ref={strip} role="tablist" aria-label={label} className={styles.strip} onKeyDown={move}>
      {tabs.map(({ key, title }) => (
        <button
          key={key}
          type="button"
          role="tab"
          id={`${panel}-${key}`}
          aria-selected={key === selected}
          aria-controls={panel}
          tabIndex={key === selected ? 0 : -1}
          className={mergeClasses(styles.tab, small && styles.small, key === selected && styles.selected)}
          onClick={() => onSelect(key)}
        >
          {title}
        </button>
      ))}
    </div>
  );
}
