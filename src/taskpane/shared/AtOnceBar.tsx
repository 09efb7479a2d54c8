import { ProgressBar, type ProgressBarProps } from '@fluentui/react-components';

const atOnce = { style: { transitionProperty: 'none' } };

/** A progress bar that stands where it is told at once: while the page is busy, one that glides never gets there. */
export function AtOnceBar(props: ProgressBarProps) {
  return <ProgressBar {...props} bar={atOnce} />;
}
