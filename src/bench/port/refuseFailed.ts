import type { DispatchResult } from '@odoo/o-spreadsheet';
import { WorkbookError, type Trouble } from '../../workbook/workbookError.js';

/** Refuses with a sentence where the grid did not do what it was told. */
export function refuseFailed(result: DispatchResult, sentence: string, trouble: Trouble = 'failed'): void {
  const reasons: readonly string[] = result.reasons;
  if (result.isSuccessful || reasons.every((reason) => reason === 'NoChanges')) return;
  throw new WorkbookError(reasons.includes('SheetLocked') ? 'protected' : trouble, sentence);
}
