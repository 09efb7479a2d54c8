import { describe, expect, it } from 'vitest';
import type { Step } from '../../../src/workbook/step.js';
import { areaAt } from '../contract/underTest.js';
import { type OfficeUnderTest, openOffice } from '../support/officeUnderTest.js';

/** Lets somebody do something after the last look and before the writing arrives. */
function betweenLookAndWriting({ host }: OfficeUnderTest, deed: () => void): void {
  let looks = 0;
  host.before = () => {
    looks += 1;
    if (looks === 2) deed();
  };
}

const first: Step = { kind: 'cells', area: areaAt('J1', 1, 1), contents: [['first']] };

describe('somebody else at the very moment of writing', () => {
  it('keeps the sheet of the same name, and everything else is as it was', async () => {
    const under = await openOffice();
    const { workbook, hands } = under;
    const plan = await workbook.plan([
      first,
      { kind: 'sheet', name: 'Shop' },
      { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['Item']] },
    ]);
    betweenLookAndWriting(under, () => under.host.book.addSheet('Shop').enter(4, 4, 'hers'));
    await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'exists' });
    expect(hands.look('Shop', 4, 4).value).toBe('hers');
    expect(hands.look('Shop', 0, 0).value).toBe('');
    expect(hands.look('Parts', 0, 9).value).toBe('');
  });

  it('keeps the table and the name of the same name', async () => {
    const under = await openOffice();
    const { workbook, host } = under;
    const plan = await workbook.plan([
      first,
      { kind: 'table', name: 'Presses', area: areaAt('A1', 2, 1) },
      { kind: 'name', name: 'ShopStamp', area: areaAt('C1', 1, 1) },
    ]);
    betweenLookAndWriting(under, () => {
      host.book.rename(host.book.addTable(areaAt('F1', 2, 2)), 'Presses');
      host.book.addName('ShopStamp', areaAt('G2', 1, 1));
    });
    await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'not allowed' });
    expect(host.book.findTable('Presses')?.area).toEqual(areaAt('F1', 2, 2));
    expect(host.book.tables).toHaveLength(1);
    expect(host.book.findName('ShopStamp')?.formula).toBe('=Parts!$G$2');
    expect(host.book.sheet('Parts').at(0, 9).value).toBe('');
  });

  it('protects a sheet: what cannot be put back is named', async () => {
    const under = await openOffice();
    const { workbook, host } = under;
    host.book.addSheet('Shop').protected = true;
    const plan = await workbook.plan([
      first,
      { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['x']] },
    ]);
    let requests = 0;
    host.before = () => {
      requests += 1;
      if (requests === 3) host.book.sheet('Parts').protected = true;
    };
    await expect(workbook.write(plan)).rejects.toThrow(
      /^The sheet is protected: .* Not put back: J1 on sheet "Parts" \(The sheet is protected/,
    );
    expect(host.book.sheet('Parts').at(0, 9).value).toBe('first');
  });

  it('deletes the sheet to be written: nothing is written', async () => {
    const under = await openOffice();
    const { workbook, host } = under;
    const shop = host.book.addSheet('Shop');
    const plan = await workbook.plan([
      first,
      { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['x']] },
    ]);
    host.book.dropSheet(shop);
    await expect(workbook.write(plan)).rejects.toThrow('There is no sheet "Shop".');
    expect(host.book.sheet('Parts').at(0, 9).value).toBe('');
  });
});
