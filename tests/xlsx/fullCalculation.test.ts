import { describe, expect, it } from 'vitest';
import { withFullCalculation } from '../../src/xlsx/fullCalculation.js';

describe('the request that a program calculates everything', () => {
  it.each([
    ['<w><sheets/><calcPr calcId="1"/></w>', '<w><sheets/><calcPr calcId="1" fullCalcOnLoad="1"/></w>'],
    ['<w><calcPr fullCalcOnLoad="0" calcId="1"/></w>', '<w><calcPr fullCalcOnLoad="1" calcId="1"/></w>'],
    ['<w><calcPr calcId="1"></calcPr></w>', '<w><calcPr calcId="1" fullCalcOnLoad="1"></calcPr></w>'],
    [
      '<w><sheets><sheet/></sheets><definedNames><definedName>a</definedName></definedNames><oleSize/></w>',
      '<w><sheets><sheet/></sheets><definedNames><definedName>a</definedName></definedNames><calcPr fullCalcOnLoad="1"/><oleSize/></w>',
    ],
    ['<x:w><x:sheets/><x:extLst/></x:w>', '<x:w><x:sheets/><x:calcPr fullCalcOnLoad="1"/><x:extLst/></x:w>'],
  ])('goes where the format has it: %s', (before, after) => {
    expect(withFullCalculation(before)).toBe(after);
    expect(withFullCalculation(after)).toBe(after);
  });
});
