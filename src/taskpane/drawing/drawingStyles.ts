import { makeStyles, tokens } from '@fluentui/react-components';

/** Narrower, the rows of a wide table stand as blocks: nothing to the side has to be looked for. */
const narrow = '@container (max-width: 440px)';

const ink = tokens.colorNeutralForeground1;
const paper = tokens.colorNeutralBackground1;

/** In forced colors the host's own two, on paper black: nothing is told by color alone. */
const stroke = {
  stroke: ink,
  '@media (forced-colors: active)': { stroke: 'CanvasText' },
  '@media print': { stroke: 'black' },
} as const;
const fill = {
  fill: ink,
  '@media (forced-colors: active)': { fill: 'CanvasText' },
  '@media print': { fill: 'black' },
} as const;
const bare = {
  fill: paper,
  '@media (forced-colors: active)': { fill: 'Canvas' },
  '@media print': { fill: 'white' },
} as const;

export const useDrawingStyles = makeStyles({
  figure: { margin: 0, display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', rowGap: '4px', minWidth: 0 },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
  summary: { margin: 0 },
  frame: {
    lineHeight: 0,
    borderRadius: tokens.borderRadiusMedium,
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: '2px' },
  },
  sheets: { display: 'flex', flexWrap: 'wrap', columnGap: '12px', alignItems: 'flex-start' },
  svg: {
    width: '100%',
    height: 'auto',
    flexShrink: 1,
    flexGrow: 0,
    display: 'block',
    forcedColorAdjust: 'none',
  },
  hint: {
    margin: 0,
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    '@media print': { display: 'none' },
  },
  unseen: { position: 'absolute', width: '1px', height: '1px', overflow: 'hidden', clipPath: 'inset(50%)' },
  said: {
    margin: 0,
    fontWeight: tokens.fontWeightSemibold,
    '@media print': { display: 'none' },
  },
  more: { cursor: 'pointer', paddingTop: '4px', paddingBottom: '4px' },
  line: { fill: 'none' },
  outline: { strokeWidth: '2.5px', strokeLinejoin: 'round', ...stroke },
  thin: { strokeWidth: '1.5px', ...stroke },
  hidden: { strokeWidth: '1.5px', strokeDasharray: '6 3', ...stroke },
  center: { strokeWidth: '1.5px', strokeDasharray: '12 3 3 3', ...stroke },
  heavy: { strokeWidth: '4px', ...stroke },
  hatchLine: { strokeWidth: '1.5px', fill: 'none', strokeOpacity: 0.45, ...stroke },
  crossLine: { strokeWidth: '1px', fill: 'none', ...stroke },
  solid: fill,
  paper: bare,
  pattern: {},
  chosen: { fill: 'none', strokeWidth: '2.5px', strokeDasharray: '5 3', ...stroke },
  text: { fontSize: '12px', fontFamily: tokens.fontFamilyBase, ...fill },
  strong: { fontWeight: tokens.fontWeightSemibold, fontSize: '13px' },
  scroll: {
    overflowX: 'auto',
    containerType: 'inline-size',
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: { borderCollapse: 'collapse', fontSize: tokens.fontSizeBase200 },
  /** A page's own style sheet may say otherwise. */
  caption: { captionSide: 'top', color: 'inherit', textAlign: 'left', paddingBottom: '4px' },
  cell: {
    textAlign: 'left',
    overflowWrap: 'break-word',
    verticalAlign: 'top',
    padding: '3px 10px 3px 0',
    borderBottom: `1px solid ${tokens.colorNeutralStroke1}`,
  },
  long: { minWidth: '140px' },
  blocks: { [narrow]: { display: 'block' } },
  blockHead: { [narrow]: { display: 'none' } },
  blockRow: {
    [narrow]: {
      display: 'flex',
      flexWrap: 'wrap',
      columnGap: '12px',
      paddingBlock: '4px',
      borderBottom: `1px solid ${tokens.colorNeutralStroke1}`,
    },
  },
  blockCell: {
    [narrow]: {
      minWidth: 0,
      padding: 0,
      borderBottom: 'none',
      '::before': { content: 'attr(data-heading) ": "', color: tokens.colorNeutralForeground2 },
      ':empty': { display: 'none' },
    },
  },
});
