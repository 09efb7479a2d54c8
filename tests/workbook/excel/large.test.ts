import { describe, expect, it } from 'vitest';
import type { Area } from '../../../src/workbook/area.js';
import { areaAt } from '../contract/underTest.js';
import { type OfficeUnderTest, openOffice } from '../support/officeUnderTest.js';

const rows = 6_000;
const list = areaAt('A1', rows, 10);

function filled({ host }: OfficeUnderTest, area: Area): void {
  const sheet = host.book.sheet(area.sheet);
  for (let row = 0; row < area.rows; row += 1)
    for (let column = 0; column < area.columns; column += 1)
      sheet.put(row, column, { value: `C${row}-${column}`, format: 'General' });
}

const contentsOf = (area: Area, text: string) =>
  Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_, column) => `${text}${row}-${column}`),
  );

describe('reading more than one message carries', () => {
  it('goes in slices, in order, and tells how far it is', async () => {
    const under = await openOffice();
    filled(under, list);
    const steps: [number, number][] = [];
    const [read] = await under.workbook.read([list], ['values'], { progress: (...step) => steps.push(step) });
    expect(read?.area).toEqual(list);
    expect(read?.values).toEqual(contentsOf(list, 'C'));
    expect(steps).toEqual([
      [50_000, 60_000],
      [60_000, 60_000],
    ]);
  });

  it('halves slices that the host still finds too large', async () => {
    const under = await openOffice();
    filled(under, list);
    under.host.limit = 200_000;
    const [all, used] = await under.workbook.read([list, { usedOf: 'Parts' }], ['values', 'formulas']);
    expect(all?.values).toEqual(contentsOf(list, 'C'));
    expect(used?.values).toEqual(all?.values);
    expect(used?.formulas).toHaveLength(rows);
  });

  it('finds out the size of a table only when it does not fit', async () => {
    const under = await openOffice();
    filled(under, list);
    await under.hands.addTable('List', list);
    await under.workbook.read([{ table: 'List' }], ['values']);
    expect(under.workbook.trips.count).toBe(1);
    under.host.limit = 500_000;
    const [read] = await under.workbook.read([{ table: 'List', part: 'data' }], ['values']);
    expect(read?.values).toHaveLength(rows - 1);
    expect(read?.values.at(-1)).toEqual(contentsOf(list, 'C').at(-1));
  });

  it('stops between slices', async () => {
    const under = await openOffice();
    filled(under, list);
    const stop = new AbortController();
    const reading = under.workbook.read([list], ['values', 'text'], {
      signal: stop.signal,
      progress: () => stop.abort(),
    });
    await expect(reading).rejects.toMatchObject({ trouble: 'canceled' });
  });

  it('says so where a single row is too large', async () => {
    const under = await openOffice();
    filled(under, areaAt('A1', 2, 10));
    under.host.limit = 60;
    await expect(under.workbook.read([areaAt('A1', 2, 10)], ['values'])).rejects.toMatchObject({
      trouble: 'too large',
    });
  });
});

describe('writing more than one message carries', () => {
  it('goes in slices below the limit of the host, tells how far it is, and is taken back whole', async () => {
    const under = await openOffice();
    const { workbook, host } = under;
    filled(under, list);
    const contents = contentsOf(list, 'a rather long text for a cell of a list ');
    const plan = await workbook.plan([{ kind: 'cells', area: list, contents }]);
    expect(plan.overwrites).toHaveLength(60_000);
    const steps: [number, number][] = [];
    const revert = await workbook.write(plan, { confirmed: true, progress: (...step) => steps.push(step) });
    expect(steps.length).toBeGreaterThan(1);
    expect(steps.at(-1)).toEqual([60_000, 60_000]);
    expect(host.book.sheet('Parts').at(rows - 1, 9).value).toBe(contents.at(-1)?.at(-1));
    await revert.run();
    expect(host.book.sheet('Parts').rows(list, ({ value }) => value)).toEqual(contentsOf(list, 'C'));
  });

  it('sends smaller messages to a host that takes less', async () => {
    const under = await openOffice();
    under.host.limit = 100_000;
    const area = areaAt('A1', 2_000, 5);
    const contents = contentsOf(area, '=text ');
    await under.workbook.write(await under.workbook.plan([{ kind: 'cells', area, contents }]));
    expect(under.host.book.sheet('Parts').rows(area, ({ value }) => value)).toEqual(contents);
  });

  it('leaves everything as it was when stopped halfway', async () => {
    const under = await openOffice();
    filled(under, list);
    const stop = new AbortController();
    const contents = contentsOf(list, 'a rather long text for a cell of a list ');
    const plan = await under.workbook.plan([{ kind: 'cells', area: list, contents }]);
    let done = 0;
    const writing = under.workbook.write(plan, {
      confirmed: true,
      signal: stop.signal,
      progress: (cells) => {
        done = cells;
        stop.abort();
      },
    });
    await expect(writing).rejects.toThrow('Stopped: the cells are as they were.');
    expect(done).toBeGreaterThan(0);
    expect(under.host.book.sheet('Parts').rows(list, ({ value }) => value)).toEqual(contentsOf(list, 'C'));
  });

  it('goes on taking back after it was stopped', async () => {
    const under = await openOffice();
    filled(under, list);
    const contents = contentsOf(list, 'a rather long text for a cell of a list ');
    const revert = await under.workbook.write(
      await under.workbook.plan([{ kind: 'cells', area: list, contents }]),
      { confirmed: true },
    );
    under.host.limit = 1_500_000;
    const stop = new AbortController();
    const taking = revert.run({ signal: stop.signal, progress: (done) => done > 0 && stop.abort() });
    await expect(taking).rejects.toThrow('Stopped. Undo again for the rest.');
    await revert.run();
    expect(under.host.book.sheet('Parts').rows(list, ({ value }) => value)).toEqual(contentsOf(list, 'C'));
  });
});
