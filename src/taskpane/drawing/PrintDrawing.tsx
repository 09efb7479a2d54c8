import { Button } from '@fluentui/react-components';
import { useState } from 'react';
import type { Drawing } from '../../drawing/drawing.js';
import { drawingPage } from '../../print/drawingPage.js';
import { canPrint } from '../shared/print/canPrint.js';

/** Prints a drawing on a page of its own; nothing where the host's pane cannot print. */
export function PrintDrawing({ drawing }: { drawing: Drawing }) {
  const [page, setPage] = useState<string>();
  if (!canPrint()) return null;
  return (
    <>
      <Button size="small" style={{ justifySelf: 'start' }} onClick={() => setPage(drawingPage(drawing))}>
        Print this drawing
      </Button>
      {page !== undefined && (
        <iframe
          title="The drawing to print"
          aria-hidden="true"
          tabIndex={-1}
          style={{ position: 'absolute', width: 0, height: 0, border: 0 }}
          sandbox="allow-same-origin allow-modals"
          srcDoc={page}
          onLoad={({ currentTarget }) => {
            currentTarget.contentWindow?.print();
            setPage(undefined);
          }}
        />
      )}
    </>
  );
}
