import { Text } from '@fluentui/react-components';
import { useMemo } from 'react';
import { type PartInput, partDrawing } from '../../drawing/part/partDrawing.js';
import { useWidth } from '../shared/useWidth.js';
import { DrawingView } from './DrawingView.js';

/** A drawing wider than this says no more. */
const widest = 900;

/** A part drawn as wide as there is room, or the sentence that says why there is none. */
export function PartView({ part }: { part: Omit<PartInput, 'width'> }) {
  const { element, width } = useWidth<HTMLDivElement>();
  const drawing = useMemo(() => partDrawing({ ...part, width: Math.min(width, widest) }), [part, width]);
  return (
    <div ref={element} style={{ minWidth: 0 }}>
      {'problem' in drawing ? <Text>{drawing.problem}</Text> : <DrawingView drawing={drawing} />}
    </div>
  );
}
