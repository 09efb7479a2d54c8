import { Button, MessageBar, MessageBarBody, Text } from '@fluentui/react-components';
import { useState } from 'react';
import type { WritePlan } from '../../../workbook/step.js';
import { captionStyle } from '../captionStyle.js';
import { counted, shownContent, shownHeld, where } from './describeStep.js';

const shownCells = 20;
const moreCells = 200;

/** The cells that hold something and would hold something else, with what they hold and what they would. */
export function Overwrites({ plan: { overwrites, formatted, protectedSheets } }: { plan: WritePlan }) {
  const [shown, setShown] = useState(shownCells);
  return (
    <>
      {overwrites.length === 0 && <Text>No filled cell is overwritten.</Text>}
      {overwrites.length > 0 && (
        <table style={{ borderCollapse: 'collapse', width: '100%' }}>
          <caption style={{ ...captionStyle, fontWeight: 600 }}>
            {counted(overwrites.length, 'cell')} will be overwritten
          </caption>
          <thead>
            <tr>
              {['Cell', 'Holds', 'Becomes'].map((heading) => (
                <th key={heading} scope="col" style={{ textAlign: 'start' }}>
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {overwrites.slice(0, shown).map(({ cell, holds, becomes, format }) => (
              <tr key={where(cell)}>
                <td>{where(cell)}</td>
                <td style={{ overflowWrap: 'anywhere' }}>{shownHeld(holds, format)}</td>
                <td style={{ overflowWrap: 'anywhere' }}>{shownContent(becomes)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {overwrites.length > shown && (
        <div style={{ display: 'flex', gap: 8, alignItems: 'center', flexWrap: 'wrap' }}>
          <Text>and {counted(overwrites.length - shown, 'cell')} more.</Text>
          <Button size="small" onClick={() => setShown(shown + moreCells)}>
            Show {Math.min(moreCells, overwrites.length - shown)} of them
          </Button>
        </div>
      )}
      {formatted > 0 && (
        <Text>
          {counted(formatted, 'cell keeps its content and changes', 'cells keep their content and change')}{' '}
          format.
        </Text>
      )}
      {protectedSheets.length > 0 && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            Protected: {protectedSheets.map(({ name }) => name).join(', ')}. The spreadsheet may refuse.
          </MessageBarBody>
        </MessageBar>
      )}
    </>
  );
}
