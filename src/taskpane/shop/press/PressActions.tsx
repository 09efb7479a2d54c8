import { Button, Input } from '@fluentui/react-components';
import { useState } from 'react';
import type { Workbook } from '../../../workbook/port.js';
import { usePropose } from '../../shared/change/useChange.js';
import { PaneField } from '../../shared/PaneField.js';
import { shortText } from '../../shared/shortText.js';
import type { ShopTable } from '../../shared/shopState.js';
import { stack } from '../../shared/stack.js';
import { removeColumn } from '../sheet/removeColumn.js';
import { columnAt, writeCell } from '../sheet/tableCells.js';
import { nameProblem } from './pressName.js';

interface Props {
  workbook: Workbook;
  table: ShopTable;
  name: string;
  onRenamed: (name: string) => void;
  onRemoved: () => void;
  onCopy: () => void;
}

const rowsKeepIt = (name: string) =>
  `Rows of a list that name ${name} keep the name and will find no such press.`;

/** What is done with a press as a whole: another name, a copy, its removal. */
export function PressActions({ workbook, table, name, onRenamed, onRemoved, onCopy }: Props) {
  const propose = usePropose();
  const [typed, setTyped] = useState<string>();
  const shown = shortText(name, 30);
  const problem = typed === undefined ? undefined : nameProblem(typed, table, name);
  const column = columnAt(table, name);
  const rename = (to: string) =>
    propose({
      title: `Rename ${shown} to ${shortText(to, 30)}`,
      remarks: [rowsKeepIt(shown)],
      steps: [writeCell(table, 0, column, to)],
      written: () => onRenamed(to),
    });
  const remove = () => {
    const title = `Remove press ${shown}`;
    const make = async () => {
      const steps = await removeColumn(workbook, table, column);
      return typeof steps === 'string'
        ? steps
        : { title, remarks: [rowsKeepIt(shown)], steps, written: onRemoved };
    };
    propose({ title, make });
  };
  return (
    <section aria-label={`The press ${shown} as a whole`} style={stack(8)}>
      {typed !== undefined && (
        <PaneField
          label="New name"
          {...(problem === undefined
            ? {}
            : { validationMessage: problem, validationState: 'error' as const })}
        >
          <Input value={typed} onChange={(_, { value }) => setTyped(value)} />
        </PaneField>
      )}
      <div style={{ display: 'flex', gap: 8, flexWrap: 'wrap' }}>
        {typed === undefined ? (
          <>
            <Button onClick={() => setTyped(name)}>Rename</Button>
            <Button onClick={onCopy}>Copy</Button>
            <Button onClick={remove}>Remove</Button>
          </>
        ) : (
          <>
            <Button
              disabled={problem !== undefined || typed.trim() === name}
              onClick={() => rename(typed.trim())}
            >
              Rename
            </Button>
            <Button onClick={() => setTyped(undefined)}>Cancel</Button>
          </>
        )}
      </div>
    </section>
  );
}
