import { type Trouble, WorkbookError } from '../workbookError.js';

/** What each code of the host means, in one sentence that says what to do. */
const known = new Map<string, readonly [Trouble, string]>(
  Object.entries({
    AccessDenied: ['protected', 'The sheet is protected: unprotect it under Review, then try again.'],
    ApiNotFound: [
      'unsupported',
      'This version of the spreadsheet program cannot do that: update it, then try again.',
    ],
    NotImplemented: [
      'unsupported',
      'This spreadsheet program cannot do that: use the desktop or web program.',
    ],
    UnsupportedOperation: ['unsupported', 'The spreadsheet program does not allow that here.'],
    UnsupportedFeature: ['unsupported', 'The workbook uses a feature that does not allow this.'],
    UnsupportedSheet: ['not allowed', 'The sheet is a chart or macro sheet: choose a sheet with cells.'],
    ItemNotFound: ['missing', 'A sheet, table or name is no longer there: look again, then try again.'],
    InvalidReference: ['missing', 'The cells are no longer there: look again, then try again.'],
    InvalidBinding: ['missing', 'The cells are no longer there: look again, then try again.'],
    ItemAlreadyExists: [
      'exists',
      'A sheet, table or name of that name is there already: choose another name.',
    ],
    InvalidArgument: [
      'not allowed',
      'The spreadsheet refused a formula, name or range: check what is to be written.',
    ],
    FormulaLengthExceedsLimit: [
      'not allowed',
      'A formula is longer than the spreadsheet allows: shorten it.',
    ],
    InvalidOperation: ['not allowed', 'The spreadsheet does not allow that here.'],
    InvalidSelection: ['not allowed', 'Cells are not what is selected: select cells, then try again.'],
    InsertDeleteConflict: ['not allowed', 'There is no room: cells beside the table cannot move.'],
    NonBlankCellOffSheet: ['not allowed', 'There is no room: cells would be pushed off the sheet.'],
    MergedRangeConflict: ['not allowed', 'Merged cells are in the way: unmerge them, then try again.'],
    FilteredRangeConflict: [
      'not allowed',
      'A filter hides some of the cells: clear the filter, then try again.',
    ],
    PivotTableRangeConflict: ['not allowed', 'A pivot table is in the way: choose other cells.'],
    RangeExceedsLimit: [
      'too large',
      'These are more cells than the spreadsheet gives at once: choose fewer.',
    ],
    OperationCellsExceedLimit: [
      'too large',
      'These are more cells than the spreadsheet takes at once: choose fewer.',
    ],
    RequestPayloadSizeLimitExceeded: [
      'too large',
      'This is more than the spreadsheet takes at once: choose fewer cells.',
    ],
    ResponsePayloadSizeLimitExceeded: [
      'too large',
      'This is more than the spreadsheet gives at once: choose fewer cells.',
    ],
    InvalidOperationInCellEditMode: [
      'busy',
      'A cell is being edited: press Enter or Esc in it, then try again.',
    ],
    HostIsBusy: ['busy', 'The spreadsheet is busy: close any open dialog, then try again.'],
    InactiveWorkbook: ['busy', 'Another workbook is in front: go back to this one, then try again.'],
    Conflict: ['changed', 'Somebody changed the same cells at that moment: look again, then try again.'],
    RequestAborted: ['canceled', 'The spreadsheet stopped the request: try again.'],
    Timeout: ['busy', 'The spreadsheet did not answer in time: try again.'],
  }),
);

/** Any failure as one sentence; the host's own error stays its cause. */
export function asWorkbookError(error: unknown): WorkbookError {
  if (error instanceof WorkbookError) return error;
  const { code } = (error ?? {}) as { code?: unknown };
  const [trouble, sentence] = known.get(String(code)) ?? [
    'failed',
    `The spreadsheet could not do that (${typeof code === 'string' ? code.slice(0, 60) : 'no reason given'}).`,
  ];
  return new WorkbookError(trouble, sentence, { cause: error });
}
