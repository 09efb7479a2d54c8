import { beforeEach, describe, expect, it } from 'vitest';
import { areaAt } from '../contract/underTest.js';
import { OfficeHost } from '../support/officeHost.js';

let host: OfficeHost;

beforeEach(() => {
  host = new OfficeHost();
  host.book.addSheet('Parts');
});

const codeOf = (work: Promise<unknown>) =>
  work.then(
    () => 'none',
    (error: { code?: string }) => error.code,
  );
const cell = (context: Excel.RequestContext, address = 'A1') =>
  context.workbook.worksheets.getItem('Parts').getRange(address);

describe('the double of the host, behind the real proxy objects', () => {
  it('lets nothing be read that was not loaded', async () => {
    const reading = Excel.run(async (context) => {
      const range = cell(context);
      await context.sync();
      return range.values;
    });
    expect(await codeOf(reading)).toBe('PropertyNotLoaded');
  });

  it('lets nothing be read before the round trip', async () => {
    const reading = Excel.run(async (context) => cell(context).load('values').values);
    expect(await codeOf(reading)).toBe('PropertyNotLoaded');
  });

  it('gives only the properties that were loaded', async () => {
    const reading = Excel.run(async (context) => {
      const range = cell(context).load('values');
      await context.sync();
      return range.formulas;
    });
    expect(await codeOf(reading)).toBe('PropertyNotLoaded');
  });

  it('shows no write before the round trip', async () => {
    await Excel.run(async (context) => {
      cell(context).values = [['x']];
      expect(host.book.sheet('Parts').at(0, 0).value).toBe('');
      await context.sync();
      expect(host.book.sheet('Parts').at(0, 0).value).toBe('x');
    });
  });

  it('keeps what was done before a failure in the same round trip, and does nothing after it', async () => {
    const writing = Excel.run(async (context) => {
      cell(context, 'A1').values = [['done']];
      context.workbook.worksheets.getItem('Gone').getRange('A1').values = [['x']];
      cell(context, 'A2').values = [['not done']];
      await context.sync();
    });
    expect(await codeOf(writing)).toBe('ItemNotFound');
    expect([host.book.sheet('Parts').at(0, 0).value, host.book.sheet('Parts').at(1, 0).value]).toEqual([
      'done',
      '',
    ]);
  });

  it.each<[string, (context: Excel.RequestContext) => void]>([
    ['InvalidArgument', (context) => (cell(context).values = [['two', 'cells']])],
    ['InvalidArgument', (context) => (cell(context).formulas = [['=SUM(']])],
    ['AccessDenied', (context) => (cell(context).values = [['x']])],
    ['ItemNotFound', (context) => void context.workbook.tables.getItem('Gone').load('name')],
    ['ItemAlreadyExists', (context) => void context.workbook.worksheets.add('parts')],
    ['RequestPayloadSizeLimitExceeded', (context) => (cell(context).values = [['x'.repeat(20_000)]])],
    ['ResponsePayloadSizeLimitExceeded', (context) => void cell(context, 'A1:Z200').load('values,text')],
  ])('fails with %s', async (code, queue) => {
    host.limit = 10_000;
    host.book.sheet('Parts').protected = code === 'AccessDenied';
    const asking = Excel.run(async (context) => {
      queue(context);
      await context.sync();
    });
    expect(await codeOf(asking)).toBe(code);
  });

  it.each([
    ['=1+1', { value: 2, formula: '=1+1' }],
    ['-A1', { formula: '=-A1' }],
    ['+A1', { formula: '=A1' }],
    ['@SUM(A1)', { formula: '=SUM(A1)' }],
    ['3/8', { format: 'd-mmm' }],
    ['1e3', { value: 1000 }],
    ['0012', { value: 12 }],
    ["'0012", { value: '0012' }],
    ['TRUE', { value: true }],
  ])('reads %s as a person would have typed it', async (text, expected) => {
    await Excel.run(async (context) => {
      cell(context).values = [[text]];
      await context.sync();
    });
    expect(host.book.sheet('Parts').at(0, 0)).toMatchObject(expected);
  });

  it('keeps everything as text in a cell of that format, the apostrophe too', async () => {
    await Excel.run(async (context) => {
      const range = cell(context, 'A1:C1');
      range.numberFormat = [['@', '@', '@']];
      range.values = [['=1+1', "'x", 5]];
      await context.sync();
    });
    const held = host.book.sheet('Parts').rows(areaAt('A1', 1, 3), ({ value }) => value);
    expect(held).toEqual([['=1+1', "'x", '5']]);
  });
});
