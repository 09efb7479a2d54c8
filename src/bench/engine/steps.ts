import type { Model } from '@odoo/o-spreadsheet';

/** The engine's session, which keeps what can be undone. */
interface Session {
  on(event: 'new-local-state-update', owner: unknown, listener: (step: { id: string }) => void): void;
  undo(id: string): void;
  redo(id: string): void;
}

/** Knows which steps were undone in the grid. */
export class Steps {
  /** The step that was done last. */
  last: string | undefined;
  private readonly undone = new Set<string>();

  constructor(model: Model) {
    const session = (model as unknown as { session: Session }).session;
    session.on('new-local-state-update', this, ({ id }) => (this.last = id));
    const { undo, redo } = session;
    session.undo = (id) => {
      this.undone.add(id);
      undo.call(session, id);
    };
    session.redo = (id) => {
      this.undone.delete(id);
      redo.call(session, id);
    };
  }

  isUndone(step: string | undefined): boolean {
    return step !== undefined && this.undone.has(step);
  }
}
