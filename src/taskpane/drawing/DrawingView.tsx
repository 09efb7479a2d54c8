import { mergeClasses } from '@fluentui/react-components';
import { type KeyboardEvent, useId, useState } from 'react';
import type { Drawing, Fill, Shape } from '../../drawing/drawing.js';
import { FactTableView } from './FactTableView.js';
import { useDrawingStyles } from './drawingStyles.js';

const forward = ['ArrowRight', 'ArrowDown'];
const back = ['ArrowLeft', 'ArrowUp'];

/**
 * A drawing with its sentence and its facts as a table. The arrow keys go from point to point, Home and End to the
 * first and last; the point's words are read out and shown.
 */
export function DrawingView({ drawing }: { drawing: Drawing }) {
  const styles = useDrawingStyles();
  const id = useId().replaceAll(':', '');
  const [chosen, setChosen] = useState<number>();
  const { title, summary, width, height, shapes, points, table } = drawing;
  const point = chosen === undefined ? undefined : points[chosen];
  const move = (event: KeyboardEvent) => {
    const next = nextPoint(event.key, chosen, points.length);
    if (next === undefined) return;
    event.preventDefault();
    setChosen(next);
  };
  return (
    <figure className={styles.figure}>
      <h3 id={`${id}t`} className={styles.title}>
        {title}
      </h3>
      <p id={`${id}s`} className={styles.summary}>
        {summary}
      </p>
      {/* The arrow keys work inside: it is one stop of the tab order, as a slider is. */}
      <div
        role="application"
        aria-roledescription="drawing"
        aria-labelledby={`${id}t`}
        aria-describedby={`${id}s ${id}k`}
        tabIndex={0}
        className={styles.frame}
        onKeyDown={move}
        onBlur={() => setChosen(undefined)}
      >
        <svg
          viewBox={`0 0 ${width} ${height}`}
          className={styles.svg}
          style={{ maxWidth: width }}
          aria-hidden="true"
        >
          <Patterns id={id} />
          {shapes.map((shape, at) => (
            <ShapeView key={at} shape={shape} id={id} />
          ))}
          {point && <circle cx={point.x} cy={point.y} r={13} className={styles.chosen} />}
        </svg>
      </div>
      <p id={`${id}k`} className={mergeClasses(styles.hint, point && styles.unseen)}>
        {points.length > 0 ? 'Use arrow keys to step through points.' : 'No points.'}
      </p>
      <p aria-live="polite" className={styles.said}>
        {point?.label ?? ''}
      </p>
      <details>
        <summary className={styles.more}>The same as a table</summary>
        <FactTableView table={table} caption={title} />
      </details>
    </figure>
  );
}

/** The point a key leads to; undefined for keys that mean nothing here. */
export function nextPoint(key: string, chosen: number | undefined, count: number): number | undefined {
  if (count === 0) return undefined;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (forward.includes(key)) return chosen === undefined ? 0 : Math.min(chosen + 1, count - 1);
  if (back.includes(key)) return chosen === undefined ? count - 1 : Math.max(chosen - 1, 0);
  return undefined;
}

function ShapeView({ shape, id }: { shape: Shape; id: string }) {
  const styles = useDrawingStyles();
  if (shape.kind === 'line')
    return (
      <path
        d={shape.path}
        className={mergeClasses(styles.line, styles[shape.line])}
        strokeDasharray={shape.dash}
      />
    );
  if (shape.kind === 'area')
    return (
      <path
        d={shape.path}
        className={mergeClasses(shape.line && styles[shape.line], styles[fillClass(shape.fill)])}
        style={patterned(shape.fill) ? { fill: `url(#${id}${shape.fill})` } : undefined}
      />
    );
  const { x, y, text, anchor = 'start', strong, behind } = shape;
  const width = textWidth(text) + 8;
  const boxX = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width + 4 : x - 4;
  return (
    <>
      {behind && (
        <rect
          x={boxX}
          y={y - 14}
          width={width}
          height={19}
          className={mergeClasses(behind === 'box' && styles.thin, styles.paper)}
        />
      )}
      <text x={x} y={y} textAnchor={anchor} className={mergeClasses(styles.text, strong && styles.strong)}>
        {text}
      </text>
    </>
  );
}

const widthPerLetter = 6.9;

/** Close enough for the paper behind a label; the font is the host's. */
const textWidth = (text: string) => text.length * widthPerLetter;

const patterned = (fill: Fill) => fill === 'stipple' || fill === 'hatch';
const fillClass = (fill: Fill) => (fill === 'paper' ? 'paper' : fill === 'solid' ? 'solid' : 'pattern');

function Patterns({ id }: { id: string }) {
  const styles = useDrawingStyles();
  return (
    <defs>
      <pattern id={`${id}stipple`} width={7} height={7} patternUnits="userSpaceOnUse">
        <circle cx={2} cy={2} r={1.1} className={styles.solid} />
        <circle cx={5.5} cy={5.5} r={1.1} className={styles.solid} />
      </pattern>
      <pattern
        id={`${id}hatch`}
        width={9}
        height={9}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0V9" className={styles.hatchLine} />
      </pattern>
    </defs>
  );
}
