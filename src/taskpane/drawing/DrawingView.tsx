import { mergeClasses } from '@fluentui/react-components';
import { type KeyboardEvent, type PropsWithChildren, useId, useState } from 'react';
import type { Drawing, Fill, Shape } from '../../drawing/drawing.js';
import { WholeSizes } from '../shared/WholeSizes.js';
import { FactTableView } from './FactTableView.js';
import { PrintDrawing } from './PrintDrawing.js';
import { useDrawingStyles } from './drawingStyles.js';

const forward = ['ArrowRight', 'ArrowDown'];
const back = ['ArrowLeft', 'ArrowUp'];

/**
 * A drawing with its sentence and its facts as a table. The arrow keys go from point to point, Home and End to the
 * first and last; the point's words are read out and shown. One of many that stand below each other has its facts as a
 * `list`, open and by that name, and says less besides.
 */
export function DrawingView({ drawing, list }: { drawing: Drawing; list?: string }) {
  const styles = useDrawingStyles();
  const id = useId().replaceAll(':', '');
  const [chosen, setChosen] = useState<number>();
  const { title, summary, width, height, shapes, notes = [], end, points, table } = drawing;
  const Title = list === undefined ? 'h3' : 'h4';
  const point = chosen === undefined ? undefined : points[chosen];
  const move = (event: KeyboardEvent) => {
    const next = nextPoint(event.key, chosen, points.length);
    if (next === undefined) return;
    event.preventDefault();
    setChosen(next);
  };
  return (
    <figure className={styles.figure}>
      <Title id={`${id}t`} className={styles.title}>
        {title}
      </Title>
      <p id={`${id}s`} className={styles.summary}>
        <WholeSizes text={summary} />
      </p>
      {/* The arrow keys work inside: it is one stop of the tab order, as a slider is. */}
      <div
        role="application"
        aria-roledescription="drawing"
        aria-labelledby={`${id}t`}
        aria-describedby={points.length > 0 ? `${id}s ${id}k` : `${id}s`}
        tabIndex={0}
        className={styles.frame}
        onKeyDown={move}
        onBlur={() => setChosen(undefined)}
      >
        <div className={styles.sheets}>
          <SvgView {...{ width, height, shapes, id }}>
            {point && <circle cx={point.x} cy={point.y} r={13} className={styles.chosen} />}
          </SvgView>
          {end && <SvgView {...end} id={`${id}e`} />}
        </div>
      </div>
      {notes.map((note) => (
        <p key={note} className={styles.summary}>
          {note}
        </p>
      ))}
      {points.length > 0 && (
        <>
          <p
            id={`${id}k`}
            className={mergeClasses(
              styles.hint,
              (point !== undefined || list !== undefined) && styles.unseen,
            )}
          >
            Use arrow keys to step through points.
          </p>
          <p aria-live="polite" className={styles.said}>
            {point?.label ?? ''}
          </p>
        </>
      )}
      {list === undefined && <PrintDrawing drawing={drawing} />}
      <details open={list !== undefined}>
        <summary className={styles.more}>{list ?? 'The same as a table'}</summary>
        <FactTableView table={table} caption={list ?? title} isNamedAbove={list !== undefined} />
      </details>
    </figure>
  );
}

interface SvgInput {
  width: number;
  height: number;
  shapes: readonly Shape[];
  id: string;
}

function SvgView({ width, height, shapes, id, children }: PropsWithChildren<SvgInput>) {
  const styles = useDrawingStyles();
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles.svg}
      style={{ maxWidth: width, flexBasis: width }}
      aria-hidden="true"
    >
      <Patterns id={id} />
      {shapes.map((shape, at) => (
        <ShapeView key={at} shape={shape} id={id} />
      ))}
      {children}
    </svg>
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
  const { x, y, text, anchor = 'start', strong, behind, turned } = shape;
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
      <text
        x={x}
        y={y}
        textAnchor={anchor}
        transform={turned && `rotate(-90 ${x} ${y})`}
        className={mergeClasses(styles.text, strong && styles.strong)}
      >
        {text}
      </text>
    </>
  );
}

const widthPerLetter = 6.9;

/** Close enough for the paper behind a label; the font is the host's. */
const textWidth = (text: string) => text.length * widthPerLetter;

const patterned = (fill: Fill) => fill !== 'solid' && fill !== 'paper';
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
      <pattern id={`${id}cross`} width={8} height={8} patternUnits="userSpaceOnUse">
        <path d="M0 0L8 8M8 0L0 8" className={styles.crossLine} />
      </pattern>
    </defs>
  );
}
