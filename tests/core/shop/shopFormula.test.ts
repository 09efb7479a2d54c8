import { describe, expect, it } from 'vitest';
import { shopRanges } from '../../../src/core/shop/shopFormula.js';
import { refusal } from '../../support/refusal.js';
import { processorMs } from '../../support/processorMs.js';

const table = (name: string) => ({ kind: 'table', name });

describe('shopRanges', () => {
  it.each([
    ['=TONROW.SHOP(Presses[[#Headers],[#Data]])', [table('Presses')]],
    ['=tonrow.shop( Presses[#All] , Tools[[#Headers], [#Data]] )', [table('Presses'), table('Tools')]],
    ['=_xldudf_TONROW_SHOP(Presses[#All])', [table('Presses')]],
    ['=_xll.TONROW.SHOP(Presses[#All])', [table('Presses')]],
    [
      '=TONROW.SHOP(Prensas_Nº[#All],,,Regeln[#All])',
      [table('Prensas_Nº'), undefined, undefined, table('Regeln')],
    ],
    ['=TONROW.SHOP(MyPresses)', [{ kind: 'name', name: 'MyPresses' }]],
    ['=TONROW.SHOP(A1:D30)', [{ kind: 'cells', address: 'A1:D30' }]],
    ['=TONROW.SHOP(Shop!$A$1:$D$30)', [{ kind: 'cells', sheet: 'Shop', address: '$A$1:$D$30' }]],
    [
      `=TONROW.SHOP('Bob''s shop, new (2)'!A1:D30,Tools[#All])`,
      [{ kind: 'cells', sheet: `Bob's shop, new (2)`, address: 'A1:D30' }, table('Tools')],
    ],
  ])('reads %s', (formula, ranges) => {
    expect(shopRanges(formula)).toEqual(ranges);
  });

  it.each(['', '=1+1', 'in · 2 presses', '=TONROW.SHOP(Presses[#All])+1', '=IF(A1,TONROW.SHOP(B1:C9),"")'])(
    'refuses %j, which is no SHOP formula',
    (formula) => {
      expect(refusal(() => shopRanges(formula))).toMatchObject({ argument: 'ShopStamp', received: formula });
    },
  );

  it.each(['FILTER(A1:B9,1)', '{1,2}', 'Presses[Item]', `"in"`, 'A1#', '[Book.xlsx]Shop!A1:B9'])(
    'refuses %s, which is no whole table, name or range',
    (argument) => {
      const failure = refusal(() => shopRanges(`=TONROW.SHOP(${argument})`));
      expect(failure.problem).toContain('is no table, name or range');
    },
  );

  it('reads a long hostile formula quickly', async () => {
    const spent = await processorMs(() => {
      expect(() => shopRanges(`=TONROW.SHOP(${'('.repeat(200_000)}`)).toThrow();
      expect(() => shopRanges(`=TONROW.SHOP(${`'a`.repeat(100_000)})`)).toThrow();
    });
    expect(spent).toBeLessThan(500);
  });
});
