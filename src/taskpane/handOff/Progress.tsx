import { Button, Spinner } from '@fluentui/react-components';
import { useHandOffStyles } from './handOffStyles.js';

interface ProgressInput {
  label: string;
  done: number;
  total: number;
  stop: () => void;
}

export function Progress({ label, done, total, stop }: ProgressInput) {
  const styles = useHandOffStyles();
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
