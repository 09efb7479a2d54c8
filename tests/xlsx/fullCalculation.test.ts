import { describe, expect, it } from 'vitest';
import { requestFullCalculation } from '../../src/xlsx/fullCalculation.js';
import { XmlElement } from '../../src/xlsx/xml/element.js';

const requested = (xml: string): string => {
  const part = XmlElement.part(xml);
  requestFullCalculation(part.root);
  return String(part);
};

describe('the request that a program calculates everything', () => {
  it.each([
    [
      '<workbook><sheets/><calcPr calcId="1"/></workbook>',
      '<workbook><sheets/><calcPr calcId="1" fullCalcOnLoad="1"/></workbook>',
    ],
    [
      '<workbook><calcPr fullCalcOnLoad="0" calcId="1"/></workbook>',
      '<workbook><calcPr fullCalcOnLoad="1" calcId="1"/></workbook>',
    ],
    [
      '<workbook><calcPr calcId="1"></calcPr></workbook>',
      '<workbook><calcPr calcId="1" fullCalcOnLoad="1"></calcPr></workbook>',
    ],
    [
      '<workbook><sheets><sheet/></sheets><definedNames><definedName>a</definedName></definedNames><oleSize/></workbook>',
      '<workbook><sheets><sheet/></sheets><definedNames><definedName>a</definedName></definedNames><calcPr fullCalcOnLoad="1"/><oleSize/></workbook>',
    ],
    [
      '<x:workbook><x:sheets/><x:extLst/></x:workbook>',
      '<x:workbook><x:sheets/><x:calcPr fullCalcOnLoad="1"/><x:extLst/></x:workbook>',
    ],
  ])('goes where the format has it: %s', (before, after) => {
    expect(requested(before)).toBe(after);
    expect(requested(after)).toBe(after);
  });
});
