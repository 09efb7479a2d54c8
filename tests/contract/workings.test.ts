// What the functions offer the pane in the same runtime, besides the cells they answer.
import { afterAll, describe, expect, it } from 'vitest';
import type { WorkedCall } from '../../src/functions/descriptor/descriptor.js';
import type { HostInput } from '../../src/functions/descriptor/hostValue.js';
import type { FunctionHelp } from '../../src/functions/wrapper.js';
import { bundle } from './support/built.js';
import { OfficialRuntime } from './support/officialRuntime.js';

interface Offered {
  tonrowWorkings: {
    workingOf(name: string, inputs: HostInput[]): WorkedCall;
    helpOf(name: string): FunctionHelp | undefined;
  };
}

const runtime = new OfficialRuntime(bundle);
const { workingOf, helpOf } = (runtime.window as unknown as Offered).tonrowWorkings;

afterAll(() => runtime.window.close());

describe('the workings offered to the pane', () => {
  it('are those of the call, ending in its value', () => {
    const { steps, unit } = workingOf('HOLEMIN', [[['1/2']], [['A36']], null]);
    expect(unit).toBe('in');
    expect(steps.at(-1)?.result).toMatchObject({ kind: 'length', value: 12.7 });
  });

  it('come with the purpose of the function and its arguments as users see them', () => {
    const help = helpOf('DIECLEARANCE');
    expect(help?.purpose).toMatch(/clearance/i);
    expect(help?.arguments.map(({ label }) => label)).toEqual(['Thickness', 'Grade', 'Shop', 'Method']);
    expect(help?.arguments.map(({ omitted }) => omitted)).toEqual([
      undefined,
      undefined,
      expect.any(String),
      expect.any(String),
    ]);
    expect(helpOf('NOSUCH')).toBeUndefined();
  });

  it('of a function that is not there are refused', () => {
    expect(() => workingOf('NOSUCH', [])).toThrow(
      'There is no function TONROW.NOSUCH: look at its spelling.',
    );
  });

  it('refuse in one sentence, a shop that was never read too', () => {
    expect(() => workingOf('HOLEMIN', [[['thick']], [['A36']], null])).toThrow(
      "Thickness: 'thick' is not a length.",
    );
    const stamp = 'in · 1 press · rules 1 · AAAA-BBBB-CCCC';
    expect(() => workingOf('HOLEMIN', [[['1/2']], [['A36']], [[stamp]]])).toThrow(
      'The shop this cell was given is not known here yet: press Ctrl+Alt+F9, or enter the cell ShopStamp again (F2, then Enter).',
    );
  });
});
