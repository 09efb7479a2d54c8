import { Button, MessageBar, MessageBarBody, Spinner, Text } from '@fluentui/react-components';
import { AtOnceBar } from '../AtOnceBar.js';
import { counted, describeSteps } from './describeStep.js';
import { ModalDialog } from './ModalDialog.js';
import { Overwrites } from './Overwrites.js';
import type { Previewed } from './proposal.js';
import type { Stage } from './useChanges.js';

interface Props {
  stage: Stage;
  onWrite: (previewed: Previewed) => void;
  onClose: () => void;
}

/** Shows what a change would write, and asks. */
export default function ChangeDialog({ stage, onWrite, onClose }: Props) {
  const { title } = stage;
  return (
    <ModalDialog
      title={title}
      onLeave={stage.at === 'writing' ? undefined : onClose}
      actions={actions(stage, onWrite, onClose)}
    >
      {content(stage)}
    </ModalDialog>
  );
}

function content(stage: Stage) {
  switch (stage.at) {
    case 'planning':
      return <Spinner label="Looking at the cells" />;
    case 'failed':
      return (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{stage.message}</MessageBarBody>
        </MessageBar>
      );
    case 'writing':
      return (
        <>
          <Text role="status">
            {stage.total > 0
              ? `${stage.done.toLocaleString('en')} of ${counted(stage.total, 'cell')}`
              : 'Writing'}
          </Text>
          <AtOnceBar
            aria-label="Cells written"
            {...(stage.total > 0 ? { value: stage.done / stage.total } : {})}
          />
        </>
      );
    case 'asking':
      return <Preview {...stage.previewed} />;
  }
}

const shownSteps = 16;

function Preview({ proposal, plan }: Previewed) {
  const { remarks = [], steps } = proposal;
  const lines = describeSteps(steps);
  return (
    <>
      {remarks.map((remark) => (
        <Text key={remark}>{remark}</Text>
      ))}
      <div>
        <Text weight="semibold">This will be written</Text>
        <ul style={{ margin: '4px 0 0', paddingInlineStart: 20 }}>
          {lines.slice(0, shownSteps).map((line, at) => (
            <li key={at}>{line}</li>
          ))}
          {lines.length > shownSteps && <li>and {lines.length - shownSteps} more like it</li>}
        </ul>
      </div>
      <Overwrites plan={plan} />
    </>
  );
}

function actions(stage: Stage, onWrite: Props['onWrite'], onClose: () => void) {
  if (stage.at === 'asking')
    return (
      <>
        <Button onClick={onClose}>Cancel</Button>
        <Button appearance="primary" onClick={() => onWrite(stage.previewed)}>
          Write to sheet
        </Button>
      </>
    );
  if (stage.at === 'writing') return <Button onClick={stage.stop}>Stop</Button>;
  return <Button onClick={onClose}>{stage.at === 'failed' ? 'Close' : 'Cancel'}</Button>;
}
