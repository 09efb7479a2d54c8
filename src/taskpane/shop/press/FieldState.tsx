import type { PressItem, PressItemKind } from '../../../core/press/item/pressItem.js';
import { isInvented } from './folds.js';

/** What a press cell says: a limit, that there is none, or nothing. */
export type FieldState = 'value' | 'none' | 'unknown';

const noLimits = new Set<PressItemKind>(['seconds', 'minutes', 'amount', 'count', 'speed', 'rate']);

/** The words of the states: a blank that stands for a value is not unknown, and a time is no limit. */
export function fieldStateWords({ key, kind, whenBlank }: PressItem): Record<FieldState, string> {
  return {
    value: 'Value',
    none: noLimits.has(kind) ? 'None' : 'No limit',
    unknown: isInvented(key) ? 'Invented' : whenBlank === undefined ? 'Not known' : 'Usual',
  };
}

export function fieldState(text: string): FieldState {
  const word = text.trim().toLowerCase();
  if (word === '') return 'unknown';
  return word === 'none' ? 'none' : 'value';
}

/** The mark of a state beside its word: a full bar, an arrow that runs on, a dashed frame. */
export function FieldStateMark({ state }: { state: FieldState }) {
  return (
    <svg width={18} height={14} viewBox="0 0 18 14" aria-hidden style={{ flex: 'none' }}>
      {state === 'value' && <path d="M2 7h11M14 2v10" stroke="currentColor" strokeWidth={2.5} fill="none" />}
      {state === 'none' && (
        <path d="M2 7h13M11 3l4 4-4 4" stroke="currentColor" strokeWidth={1.75} fill="none" />
      )}
      {state === 'unknown' && (
        <rect
          x={2}
          y={2}
          width={14}
          height={10}
          stroke="currentColor"
          strokeWidth={1.5}
          strokeDasharray="3 2"
          fill="none"
        />
      )}
    </svg>
  );
}
