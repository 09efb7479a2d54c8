import { Button, Text } from '@fluentui/react-components';
import { Component, type ReactNode } from 'react';

interface Failed {
  failure: { error: unknown } | undefined;
}

/** Shows what went wrong instead of an empty pane. Nothing is lost: what counts is on the sheet. */
export class ErrorBoundary extends Component<{ children: ReactNode }, Failed> {
  override state: Failed = { failure: undefined };

  static getDerivedStateFromError(error: unknown): Failed {
    return { failure: { error } };
  }

  override render() {
    const { failure } = this.state;
    if (!failure) return this.props.children;
    const { error } = failure;
    return (
      <div role="alert" style={{ padding: 16, display: 'grid', gap: 8, justifyItems: 'start' }}>
        <Text weight="semibold">This could not be shown. The workbook is unchanged.</Text>
        <Text>{error instanceof Error ? error.message : String(error)}</Text>
        <Button onClick={() => this.setState({ failure: undefined })}>Try again</Button>
      </div>
    );
  }
}
