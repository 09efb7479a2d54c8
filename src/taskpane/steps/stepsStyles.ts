import { makeStyles, tokens } from '@fluentui/react-components';

export const useStepsStyles = makeStyles({
  place: { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', rowGap: '16px', minWidth: 0 },
  part: { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', rowGap: '8px', minWidth: 0 },
  heading: {
    margin: 0,
    fontSize: tokens.fontSizeBase400,
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: 'anywhere',
  },
  text: { margin: 0, overflowWrap: 'anywhere' },
  quiet: { margin: 0, color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  actions: { display: 'flex', flexWrap: 'wrap', gap: '8px' },
  list: { margin: 0, padding: 0, listStyleType: 'none', display: 'grid', rowGap: '12px' },
  given: {
    margin: 0,
    display: 'grid',
    gridTemplateColumns: 'fit-content(40%) minmax(0, 1fr)',
    columnGap: '12px',
    rowGap: '2px',
  },
  givenValue: { margin: 0, overflowWrap: 'anywhere' },
  step: {
    borderLeft: `3px solid ${tokens.colorNeutralStroke1}`,
    paddingLeft: '10px',
    display: 'grid',
    rowGap: '2px',
    minWidth: 0,
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
  formula: { margin: 0, fontFamily: tokens.fontFamilyMonospace, overflowWrap: 'anywhere' },
  values: {
    margin: 0,
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr) auto',
    columnGap: '12px',
  },
  term: { color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  value: { margin: 0, textAlign: 'right', overflowWrap: 'anywhere' },
  result: { fontWeight: tokens.fontWeightSemibold },
  source: { margin: 0, color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
  caution: { margin: 0, fontWeight: tokens.fontWeightSemibold },
});
