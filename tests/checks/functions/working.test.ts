import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

describe('WORKING', () => {
  it('Groover, blanking example, step by step: π · 150 = 471.2 mm; times 3.2 mm and 310 MPa is 467.469 kN (digits from memory)', () => {
    const shown = new SheetRuntime().call('WORKING', 'PUNCHFORCE', 'Ø150', 3.2, 'shear 310 MPa', 'mm');
    const [headings = [], ...steps] = shown as (string | number)[][];
    const at = (heading: string) => headings.indexOf(heading);
    const row = (title: string) => steps.find(([step]) => step === title) ?? [];
    expectPrinted(Number(row('Cut perimeter')[at('Result')]), '471.2');
    expect(row('Cut perimeter')[at('Unit')]).toBe('mm');
    expect(row('Shear strength')[at('Result')]).toBe(310);
    expectPrinted(Number(row('Punching force')[at('Result')]), '467.469');
    expect(row('Punching force')[at('Unit')]).toBe('kN');
    expect(String(row('Punching force')[at('Source')])).toContain('Groover');
  });
});
