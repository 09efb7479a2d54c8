import { makeStyles, Text } from '@fluentui/react-components';
import type { ReactNode } from 'react';

const useStyles = makeStyles({ summary: { cursor: 'pointer', padding: '4px 0', fontWeight: 600 } });

/** Folds that are needed for one thing, under its heading. */
export function FoldGroup({
  title,
  isFolded,
  children,
}: {
  title: string;
  isFolded: boolean;
  children: ReactNode;
}) {
  const styles = useStyles();
  return (
    <section aria-label={title}>
      {isFolded ? (
        <details>
          <summary className={styles.summary}>{title}</summary>
          {children}
        </details>
      ) : (
        <>
          <Text as="h3" weight="semibold" style={{ margin: 0 }}>
            {title}
          </Text>
          {children}
        </>
      )}
    </section>
  );
}
