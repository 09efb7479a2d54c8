import { makeStyles, tokens } from '@fluentui/react-components';
import { type ReactNode, useEffect, useId, useRef } from 'react';

const padding = 16;

const useStyles = makeStyles({
  dialog: {
    boxSizing: 'border-box',
    width: 'min(560px, 100vw - 16px)',
    maxHeight: 'calc(100vh - 16px)',
    padding: `${padding}px`,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusXLarge,
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
    boxShadow: tokens.shadow28,
    overflowWrap: 'anywhere',
    '::backdrop': { backgroundColor: 'rgba(0, 0, 0, 0.4)' },
  },
  body: { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', gap: '12px' },
  title: { margin: 0, fontSize: '18px', lineHeight: '24px', fontWeight: 600 },
  /** In sight however long the dialog is and however low the window: over its padding, too. */
  actions: {
    position: 'sticky',
    bottom: `-${padding}px`,
    display: 'flex',
    gap: '8px',
    justifyContent: 'flex-end',
    flexWrap: 'wrap',
    padding: `8px 0 ${padding}px`,
    marginBottom: `-${padding}px`,
    backgroundColor: tokens.colorNeutralBackground1,
  },
});

interface Props {
  title: string;
  /** Undefined while the dialog may not be left. */
  onLeave: (() => void) | undefined;
  actions: ReactNode;
  children: ReactNode;
}

/** A dialog of the browser's own: it holds the focus, and Escape leaves it. */
export function ModalDialog({ title, onLeave, actions, children }: Props) {
  const styles = useStyles();
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const shown = dialog.current;
    const before = document.activeElement;
    shown?.showModal();
    return () => {
      shown?.close();
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onLeave?.();
      }}
      // Some browsers close at a second Escape whatever was said to the first.
      onClose={() => (onLeave ? onLeave() : dialog.current?.showModal())}
    >
      <div className={styles.body}>
        <h2 id={titleId} className={styles.title} tabIndex={-1}>
          {title}
        </h2>
        {children}
        <div className={styles.actions}>{actions}</div>
      </div>
    </dialog>
  );
}
