import type { CSSProperties } from 'react';

/** Captions stand above their tables in the color of the text, whatever the page around the pane says. */
export const captionStyle: CSSProperties = { textAlign: 'start', captionSide: 'top', color: 'inherit' };
