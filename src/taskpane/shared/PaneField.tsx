import { Field, type FieldProps } from '@fluentui/react-components';

/** A field that never grows wider than the pane, whatever its hint or its choices say. */
export function PaneField({ style, ...props }: FieldProps) {
  return <Field {...props} style={{ gridTemplateColumns: 'minmax(0, 1fr)', minWidth: 0, ...style }} />;
}
