import { makeStyles, tokens } from '@fluentui/react-components';

export const useSectionStyles = makeStyles({
  place: { display: 'grid', gridTemplateColumns: 'minmax(0, 1fr)', rowGap: '20px', minWidth: 0 },
  part: {
    display: 'grid',
    gridTemplateColumns: 'minmax(0, 1fr)',
    rowGap: '8px',
    minWidth: 0,
    alignContent: 'start',
  },
  heading: { margin: 0, fontSize: tokens.fontSizeBase400, fontWeight: tokens.fontWeightSemibold },
  subheading: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
  laterSubheading: { marginTop: '12px' },
  text: { margin: 0, overflowWrap: 'anywhere' },
  actions: { display: 'flex', flexWrap: 'wrap', gap: '8px' },
  list: { margin: 0, paddingLeft: '18px', overflowWrap: 'anywhere' },
  preview: {
    display: 'grid',
    rowGap: '6px',
    padding: '8px 10px',
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    minWidth: 0,
  },
  frame: {
    width: '100%',
    height: '480px',
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    backgroundColor: 'white',
  },
});
