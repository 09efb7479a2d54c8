import { Button, Spinner } from '@fluentui/react-components';
import { useSectionStyles } from '../shared/sectionStyles.js';

interface ProgressInput {
  label: string;
  done: number;
  total: number;
  stop: () => void;
}

export function Progress({ label, done, total, stop }: ProgressInput) {
  const styles = useSectionStyles();
  const counted = total > 0 ? `, ${done.toLocaleString('en')} of ${total.toLocaleString('en')}` : '';
  return (
    <div className={styles.actions} role="status">
      <Spinner size="tiny" label={`${label}${counted}`} />
      <Button size="small" onClick={stop}>
        Stop
      </Button>
    </div>
  );
}
