import { makeStyles, tokens } from '@fluentui/react-components';
import type { Verdict } from '../../core/press/finding.js';

export type MarkForm = 'ring' | 'half ring' | 'square' | 'dashed ring';

/** The form beside a verdict's word: what can be made, what is near its limit, what fails, what is not known. */
export function markForm(verdict: Verdict): MarkForm {
  if (verdict === 'OK') return 'ring';
  if (verdict === 'Near limit') return 'half ring';
  return verdict === 'Not checked' || verdict === 'Check input' ? 'dashed ring' : 'square';
}

const useStyles = makeStyles({
  row: {
    display: 'inline-flex',
    alignItems: 'center',
    columnGap: '6px',
    fontWeight: tokens.fontWeightSemibold,
  },
  mark: { flexShrink: 0, color: 'currentColor', forcedColorAdjust: 'auto' },
});

/** A verdict: its mark and, always, its word. */
export function VerdictMark({ verdict }: { verdict: Verdict }) {
  const styles = useStyles();
  return (
    <span className={styles.row}>
      <svg className={styles.mark} width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
        <Mark form={markForm(verdict)} />
      </svg>
      {verdict}
    </span>
  );
}

function Mark({ form }: { form: MarkForm }) {
  if (form === 'square') return <rect x="2" y="2" width="10" height="10" fill="currentColor" />;
  const ring = { cx: 7, cy: 7, r: 5, fill: 'none', stroke: 'currentColor', strokeWidth: 2 };
  return (
    <>
      <circle {...ring} strokeDasharray={form === 'dashed ring' ? '3 2.2' : undefined} />
      {form === 'half ring' && <path d="M7 2a5 5 0 0 0 0 10Z" fill="currentColor" />}
    </>
  );
}
