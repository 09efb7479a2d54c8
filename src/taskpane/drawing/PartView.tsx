import { Text } from '@fluentui/react-components';
import { useMemo } from 'react';
import { isBare, type PartInput, partDrawing } from '../../drawing/part/partDrawing.js';
import { useWidth } from '../shared/useWidth.js';
import { DrawingView } from './DrawingView.js';

/** A drawing wider than this says no more. */
const widest = 900;

interface Props {
  part: Omit<PartInput, 'width'>;
  /** A part without any work is told in its sentence: its outline alone shows nothing. */
  isBareTold?: boolean;
}

/** A part drawn as wide as there is room, or the sentence that says why there is none. */
export function PartView({ part, isBareTold = false }: Props) {
  const { element, width } = useWidth<HTMLDivElement>();
  const drawing = useMemo(() => partDrawing({ ...part, width: Math.min(width, widest) }), [part, width]);
  return (
    <div ref={element} style={{ minWidth: 0 }}>
      {'problem' in drawing ? (
        <Text>{drawing.problem}</Text>
      ) : isBareTold && isBare(drawing) ? (
        <Text>{drawing.summary}</Text>
      ) : (
        <DrawingView drawing={drawing} />
      )}
    </div>
  );
}
