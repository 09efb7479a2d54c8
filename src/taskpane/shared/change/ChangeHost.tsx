import { Button, MessageBar, MessageBarActions, MessageBarBody } from '@fluentui/react-components';
import { lazy, type ReactNode, Suspense, useEffect, useMemo, useRef } from 'react';
import type { Workbook } from '../../../workbook/port.js';
import { ChangeContext } from './useChange.js';
import { useChanges } from './useChanges.js';

/*
 * Nothing is written but what was shown: a change is proposed, looked at, written, and can be undone.
 */

const ChangeDialog = lazy(() => import(/* webpackChunkName: "change" */ './ChangeDialog.js'));

const contentStyle = {
  display: 'flex',
  flexDirection: 'column',
  flexGrow: 1,
  minWidth: 0,
  outline: 'none',
} as const;

/** Gives what is inside the way to propose changes; shows the dialog, and above it what was written last. */
export function ChangeHost({ workbook, children }: { workbook: Workbook; children: ReactNode }) {
  const { stage, written, refusal, trouble, propose, goTo, write, takeBack, keep, close, closeTrouble } =
    useChanges(workbook);
  const offered = useMemo(() => ({ propose, goTo }), [propose, goTo]);
  const [newest] = written;
  const message = useRef<HTMLDivElement>(null);
  const content = useRef<HTMLDivElement>(null);
  const before = useRef(newest);
  // What had the keyboard may be gone: it goes on at what was written, and after that at the place.
  useEffect(() => {
    if (newest) message.current?.focus();
    else if (before.current) content.current?.focus();
    before.current = newest;
  }, [newest]);
  return (
    <ChangeContext.Provider value={offered}>
      <div role="status" ref={message} tabIndex={-1} style={{ outlineOffset: -2 }}>
        {newest && (
          <MessageBar intent={refusal === undefined ? 'success' : 'error'} layout="multiline">
            <MessageBarBody>{refusal ?? `Done: ${newest.title}.`}</MessageBarBody>
            <MessageBarActions>
              <Button size="small" onClick={() => void takeBack()}>
                Undo
              </Button>
              <Button size="small" onClick={keep}>
                Dismiss
              </Button>
            </MessageBarActions>
          </MessageBar>
        )}
      </div>
      {trouble !== undefined && (
        <div role="alert">
          <MessageBar intent="error" layout="multiline">
            <MessageBarBody>{trouble}</MessageBarBody>
            <MessageBarActions>
              <Button size="small" onClick={closeTrouble}>
                Close
              </Button>
            </MessageBarActions>
          </MessageBar>
        </div>
      )}
      <div ref={content} tabIndex={-1} style={contentStyle}>
        {children}
      </div>
      {stage && (
        <Suspense>
          <ChangeDialog stage={stage} onWrite={(previewed) => void write(previewed)} onClose={close} />
        </Suspense>
      )}
    </ChangeContext.Provider>
  );
}
