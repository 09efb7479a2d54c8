import type { CSSProperties } from 'react';

/** Things one below the other, never wider than the pane. */
export function stack(gap: number): CSSProperties {
  return { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', gap, alignContent: 'start' };
}
