import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import type { PressItemKey } from '../../../../core/press/item/pressItem.js';
import { sketches, sketchWidth } from './sketches.js';

const ink = {
  stroke: tokens.colorNeutralForeground1,
  '@media (forced-colors: active)': { stroke: 'CanvasText' },
} as const;
const words = {
  fill: tokens.colorNeutralForeground1,
  '@media (forced-colors: active)': { fill: 'CanvasText' },
} as const;

const useStyles = makeStyles({
  figure: { margin: 0 },
  svg: { width: '100%', maxWidth: '300px', height: 'auto', display: 'block', forcedColorAdjust: 'none' },
  press: { fill: 'none', strokeWidth: '1.5px', ...ink },
  steel: {
    fill: tokens.colorNeutralBackground5,
    strokeWidth: '2px',
    ...ink,
    '@media (forced-colors: active)': { fill: 'Canvas', stroke: 'CanvasText' },
  },
  dimension: { fill: 'none', strokeWidth: '1.5px', ...ink },
  focused: { strokeWidth: '4px' },
  label: { fontSize: '13px', fontFamily: tokens.fontFamilyBase, ...words },
  strong: { fontWeight: 700, textDecorationLine: 'underline' },
});

/** What each number of a station measures; the one of the focused field is heavy. The fields' hints say the same. */
export function StationSketch({ station, focused }: { station: string; focused: string | undefined }) {
  const styles = useStyles();
  const sketch = sketches[station as PressItemKey];
  if (!sketch) return null;
  const { title, height, press, steel, dimensions } = sketch;
  return (
    <figure className={styles.figure}>
      <svg
        viewBox={`0 0 ${sketchWidth} ${height}`}
        className={styles.svg}
        role="img"
        aria-label={`${title}. It shows: ${dimensions.map(({ label }) => label.text).join(', ')}.`}
      >
        {press.map((path) => (
          <path key={path} d={path} className={styles.press} />
        ))}
        {steel.map((path) => (
          <path key={path} d={path} className={styles.steel} />
        ))}
        {dimensions.map(({ keys, path, label }) => {
          const isFocused = keys.some((key) => key === focused);
          return (
            <g key={label.text} data-dimension={label.text} data-focused={isFocused}>
              <path d={path} className={mergeClasses(styles.dimension, isFocused && styles.focused)} />
              <text
                x={label.x}
                y={label.y}
                textAnchor={label.anchor}
                className={mergeClasses(styles.label, isFocused && styles.strong)}
              >
                {label.text}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
