import { makeStyles, tokens } from '@fluentui/react-components';

const useStyles = makeStyles({
  caution: {
    padding: '8px 12px',
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    fontSize: '12px',
    lineHeight: '18px',
  },
  summary: { cursor: 'pointer', padding: '2px 0' },
  text: { margin: '6px 0 0' },
});

/** What these numbers are not, within reach in every place. */
export function Caution() {
  const styles = useStyles();
  return (
    <details className={styles.caution}>
      <summary className={styles.summary}>Planning estimates. Caution</summary>
      <p className={styles.text}>
        The plate on the press, its manual and the tool maker&apos;s limits govern; the job&apos;s
        specification, local codes and a licensed engineer govern connections. Guards on; eye protection; lock
        out before changing tools. Never punch over the edge of an existing hole, or part of a slug, unless
        the tool is made for it. Never exceed the rating. Keep the stripper level and close.
      </p>
    </details>
  );
}
