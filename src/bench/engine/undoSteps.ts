import type { Model } from '@odoo/o-spreadsheet';

/** The engine's session, which keeps what can be undone. */
interface Session {
  on(event: 'new-local-state-update', owner: unknown, listener: (step: { id: string }) => void): void;
  undo(id: string): void;
  redo(id: string): void;
}

/** The parts of the engine that this reaches for. */
interface Inside {
  session: Session;
  handlers: { undoStack?: string[] }[];
  finalize?: () => void;
}

/** Knows which steps were undone in the grid, and makes one step of several. */
export class UndoSteps {
  /** The step that was done last. */
  last: string | undefined;
  private readonly undone = new Set<string>();
  /** UndoSteps that are undone and done again together, by the last of them. */
  private readonly together = new Map<string, readonly string[]>();
  private readonly inside: Inside;

  constructor(model: Model) {
    this.inside = model as unknown as Inside;
    const { session } = this.inside;
    session.on('new-local-state-update', this, ({ id }) => (this.last = id));
    const { undo, redo } = session;
    session.undo = (id) => {
      this.undone.add(id);
      this.each([...this.partsOf(id)].reverse(), (part) => undo.call(session, part));
    };
    session.redo = (id) => {
      this.undone.delete(id);
      this.each(this.partsOf(id), (part) => redo.call(session, part));
    };
  }

  isUndone(step: string | undefined): boolean {
    return step !== undefined && this.undone.has(step);
  }

  /** Makes one step of steps that follow one another; where somebody else's lies between, they stay apart. */
  join(steps: readonly string[]): void {
    const stack = this.inside.handlers.find(({ undoStack }) => undoStack)?.undoStack;
    const last = steps.at(-1);
    if (!stack || last === undefined || steps.length < 2) return;
    const start = stack.length - steps.length;
    if (steps.some((step, at) => stack[start + at] !== step)) return;
    stack.splice(start, steps.length, last);
    this.together.set(last, steps);
  }

  private partsOf(id: string): readonly string[] {
    return this.together.get(id) ?? [id];
  }

  /** The grid is calculated once, after the last. */
  private each(parts: readonly string[], job: (part: string) => void): void {
    const { inside } = this;
    parts.forEach((part, at) => {
      if (at === 0 && parts.length > 1) inside.finalize = () => undefined;
      if (at === parts.length - 1) delete inside.finalize;
      job(part);
    });
  }
}
