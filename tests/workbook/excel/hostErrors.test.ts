import { afterEach, describe, expect, it, vi } from 'vitest';
import { asWorkbookError } from '../../../src/workbook/excel/hostErrors.js';
import { ExcelWorkbook } from '../../../src/workbook/excel/excelWorkbook.js';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import { areaAt } from '../contract/underTest.js';
import { openOffice } from '../support/officeUnderTest.js';

/** Excel.ErrorCodes of the platform's reference, less charts, pictures and queries, and what hosts add to it. */
const codes = [
  'AccessDenied',
  'ApiNotFound',
  'Conflict',
  'FilteredRangeConflict',
  'FormulaLengthExceedsLimit',
  'InactiveWorkbook',
  'InsertDeleteConflict',
  'InvalidArgument',
  'InvalidBinding',
  'InvalidOperation',
  'InvalidReference',
  'InvalidSelection',
  'ItemAlreadyExists',
  'ItemNotFound',
  'MergedRangeConflict',
  'NonBlankCellOffSheet',
  'NotImplemented',
  'OperationCellsExceedLimit',
  'PivotTableRangeConflict',
  'RangeExceedsLimit',
  'RequestAborted',
  'ResponsePayloadSizeLimitExceeded',
  'RequestPayloadSizeLimitExceeded',
  'UnsupportedFeature',
  'UnsupportedOperation',
  'UnsupportedSheet',
  'InvalidOperationInCellEditMode',
];

afterEach(() => vi.unstubAllGlobals());

describe('errors of the host', () => {
  it.each(codes)('%s becomes one sentence that names no code', (code) => {
    const cause = Object.assign(new Error('Der Text des Hosts.'), { code });
    const error = asWorkbookError(cause);
    expect(error).toBeInstanceOf(WorkbookError);
    expect(error.trouble).not.toBe('failed');
    expect(error.message).toMatch(/^[A-Z][^.]+\.$/);
    expect(error.message).not.toContain(code);
    expect(error.message).not.toContain('Der Text');
    expect(error.cause).toBe(cause);
  });

  it.each([
    ['a code nobody knows', { code: 'SomethingNew' }, 'The spreadsheet could not do that (SomethingNew).'],
    ['no code', new Error('boom'), 'The spreadsheet could not do that (no reason given).'],
    ['nothing', undefined, 'The spreadsheet could not do that (no reason given).'],
    ['an inherited name', { code: 'constructor' }, 'The spreadsheet could not do that (constructor).'],
  ])('%s still becomes a sentence', (_, error, sentence) => {
    expect(asWorkbookError(error)).toMatchObject({ trouble: 'failed', message: sentence });
  });

  it('arrive from the host as the workbook says them', async () => {
    const { workbook, host, hands } = await openOffice();
    host.editing = true;
    await expect(workbook.sheets()).rejects.toMatchObject({
      trouble: 'busy',
      message: 'A cell is being edited: press Enter or Esc in it, then try again.',
    });
    host.editing = false;
    host.book.selected = undefined;
    await expect(workbook.selection()).rejects.toMatchObject({ trouble: 'not allowed' });
    await hands.protect('Parts');
    const plan = await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), contents: [['x']] }]);
    await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'protected' });
  });

  it('say so where there is no spreadsheet', async () => {
    vi.stubGlobal('Excel', undefined);
    await expect(new ExcelWorkbook().sheets()).rejects.toThrow('There is no workbook here');
  });
});
