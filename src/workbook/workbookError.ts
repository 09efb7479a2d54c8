/** Why the workbook did not do what was asked. */
export type Trouble =
  /** The sheet is protected. */
  | 'protected'
  /** A sheet, table or name is not there. */
  | 'missing'
  /** A sheet, table or name of that name is there already. */
  | 'exists'
  /** The user is typing in a cell, or the host does something else. */
  | 'busy'
  /** More than the host carries in one message. */
  | 'too large'
  /** Somebody changed the cells meanwhile. */
  | 'changed'
  /** The change that was to be taken back is undone already. */
  | 'undone'
  /** Cells hold something and nobody has said yes. */
  | 'not confirmed'
  | 'canceled'
  /** The host does not allow this here: merged cells, a pivot table, a shared legacy workbook. */
  | 'not allowed'
  /** The host is too old or of another kind. */
  | 'unsupported'
  | 'failed';

/** The only error the port throws on purpose. Its message is one sentence that a user can act on. */
export class WorkbookError extends Error {
  constructor(
    readonly trouble: Trouble,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
    this.name = 'WorkbookError';
  }
}
