import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { recalculateWorkbook } from '../../../src/functions/shop/recalculateWorkbook.js';
import { OfficeHost } from '../../workbook/support/officeHost.js';

let host: OfficeHost;
beforeEach(() => {
  host = new OfficeHost();
  host.book.addSheet('Parts');
});
afterEach(() => vi.unstubAllGlobals());

describe('asking the host to calculate again', () => {
  it('asks for every cell, clean or not', async () => {
    expect(await recalculateWorkbook()).toBe('asked');
    expect(host.book.calculations).toEqual(['Full']);
  });

  it('leaves manual calculation to the user', async () => {
    host.book.calculationMode = 'Manual';
    expect(await recalculateWorkbook()).toBe('manual');
    expect(host.book.calculations).toEqual([]);
  });

  it('works where the sheets are protected: it writes no cell', async () => {
    host.book.sheet('Parts').protected = true;
    expect(await recalculateWorkbook()).toBe('asked');
  });

  it('asks again until the cell that is edited is left', async () => {
    host.editing = true;
    const asking = recalculateWorkbook();
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(host.book.calculations).toEqual([]);
    host.editing = false;
    expect(await asking).toBe('asked');
    expect(host.book.calculations).toEqual(['Full']);
  });

  it('says so where the host refuses for another reason', async () => {
    host.limit = 1;
    expect(await recalculateWorkbook()).toBe('refused');
  });
});
