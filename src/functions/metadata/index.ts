import type { Argument } from '../argument/argument.js';
import { catalog } from '../catalog.js';
import type { Descriptor } from '../descriptor/descriptor.js';

/** The host shows at most this much of a description. */
const longestDescription = 128;

/** The functions as the host registers them (custom functions metadata), made from the descriptors. */
export function functionsMetadata() {
  return {
    allowCustomDataForDataTypeAny: false,
    allowErrorForDataTypeAny: true,
    enums: catalog.flatMap(enumsOf),
    functions: catalog.map((descriptor) => ({
      id: descriptor.name,
      name: descriptor.name,
      description: checkedLength(descriptor.purpose, descriptor.name),
      parameters: Object.entries(descriptor.arguments).map(([name, argument]) =>
        parameter(name, argument, descriptor),
      ),
      result: { type: 'any', dimensionality: descriptor.result === 'cells' ? 'matrix' : 'scalar' },
      ...(descriptor.isCancelable ? { options: { cancelable: true } } : {}),
    })),
  };
}

function enumId(descriptor: Descriptor, name: string): string {
  return `${descriptor.name}_${name}`;
}

function enumsOf(descriptor: Descriptor) {
  return Object.entries(descriptor.arguments).flatMap(([name, { choices }]) => {
    if (!choices) return [];
    const values = choices.map(({ value, meaning }) => ({
      name: value,
      stringValue: value,
      tooltip: meaning,
    }));
    return [{ id: enumId(descriptor, name), type: 'string', values }];
  });
}

/** Choices are string enumerations; everything else is `any`, or the host would refuse text such as `3/8`. */
function parameter(name: string, argument: Argument<unknown>, descriptor: Descriptor) {
  return {
    name,
    description: checkedLength(argument.meaning, `${descriptor.name} ${name}`),
    type: argument.choices ? 'string' : 'any',
    dimensionality: argument.dimensionality,
    ...(argument.choices ? { customEnumId: enumId(descriptor, name) } : {}),
    ...(argument.optional ? { optional: true } : {}),
  };
}

function checkedLength(text: string, of: string): string {
  if (text.length <= longestDescription) return text;
  throw new Error(
    `the description of ${of} has ${text.length} characters; the host takes ${longestDescription}`,
  );
}
