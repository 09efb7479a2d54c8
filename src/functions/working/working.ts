import { refuseUnknown } from '../../core/inputError.js';
import { type CellValue, quoted } from '../../core/quantity/cellValue.js';
import { nameKey } from '../../core/shop/table.js';
import type { MatrixArgument, ScalarArgument } from '../argument/argument.js';
import { define, type Descriptor, whenThere } from '../descriptor/descriptor.js';
import { stepHeadings, stepRow } from './stepRow.js';

/** An argument that is handed on as it came. */
const handedOn = (position: string): MatrixArgument<CellValue[][] | null> => ({
  kind: 'any',
  meaning: `The ${position} argument of that function`,
  dimensionality: 'matrix',
  optional: true,
  omitted: 'left out',
  read: (cells) => cells,
});

/** The function that shows the working of any of these, in their order. */
export function workingOf(functions: readonly Descriptor[]): Descriptor {
  const names = functions.map(({ name }) => name);
  const functionArgument: ScalarArgument<string> = {
    kind: 'choice',
    meaning: 'Which function, as text: "PUNCHFORCE"',
    dimensionality: 'scalar',
    optional: false,
    choices: functions.map(({ name, purpose }) => ({ value: name, meaning: purpose })),
    read: (value, { argument }) => {
      const plain = nameKey(value).replace(/^tonrow\./, '');
      const found = names.find((name) => name.toLowerCase() === plain);
      return (
        found ??
        refuseUnknown(
          argument,
          String(value),
          `${quoted(value)} is not a function.`,
          `Functions: ${names.join(', ')}.`,
        )
      );
    },
  };
  return define({
    name: 'WORKING',
    purpose: 'The working of a function: every step with formula, values, result and source',
    arguments: {
      function: functionArgument,
      first: handedOn('first'),
      second: handedOn('second'),
      third: handedOn('third'),
      fourth: handedOn('fourth'),
      fifth: handedOn('fifth'),
      sixth: handedOn('sixth'),
      seventh: handedOn('seventh'),
      eighth: handedOn('eighth'),
    },
    result: 'cells',
    gives:
      'A heading row, then a row for each step. The last result is the value of the function, to the last digit.',
    errors: 'Those of the function asked for.',
    source: 'each step names its own',
    example: '=TONROW.WORKING("PUNCHFORCE","13/16","3/8","A36")',
    isCancelable: true,
    compute({ function: name, ...given }, context) {
      return whenThere(context.workingOf(name, Object.values(given)), ({ steps, unit }) => [
        stepHeadings,
        ...steps.map((step) => stepRow(step, unit)),
      ]);
    },
  });
}
