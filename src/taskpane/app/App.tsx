import { FluentProvider } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import { ErrorBoundary } from './ErrorBoundary.js';
import { Shell } from './Shell.js';
import { useTheme } from './useTheme.js';

export function App({ workbook }: { workbook: Workbook }) {
  const theme = useTheme();
  return (
    <FluentProvider theme={theme} style={{ minHeight: '100%' }}>
      <ErrorBoundary>
        <Shell workbook={workbook} />
      </ErrorBoundary>
    </FluentProvider>
  );
}
