// docs/reference.md: every workbook function, from its descriptor and the result of its example.
import { code, generated, table, textOf } from './markdown.mjs';

/** `results`: what each function's example gives, by its name, as `npm run calc -- --json` reports it. */
export function functionsPage({ catalog, namespace, shopUnits }, results) {
  const sections = catalog.map((descriptor) => section(descriptor, { namespace, shopUnits, results }));
  const index = catalog.map(({ name, purpose }) => [`[${name}](#${name.toLowerCase()})`, purpose]);
  return [generated, '# Functions', intro(namespace), table(['Function', 'Gives'], index), ...sections].join(
    '\n\n',
  );
}

const intro = (
  namespace,
) => `All functions stand in the namespace ${code(namespace)}. Lengths, grades, sections and holes are typed as the trade writes
them; a bare number is in the length unit of the shop. The argument ${code('shop')} is the cell named ${code('ShopStamp')},
or the text ${code('in')} or ${code('mm')} where no shop data are needed. Arguments in square brackets may be left out.

Every function refuses what it cannot read with ${code('#VALUE!')}, and a grade, press or table row it does not know with
${code('#N/A')}. The message of the cell says what was read, what is allowed and how to fix it. The errors below come on
top of that.

The examples run: ${code("npm run --silent calc -- --workbook examples/quote.xlsx '=TONROW.…'")}. Where one names
${code('ShopStamp')}, it is that of the example workbook. Numbers are shown with six digits.`;

function section(descriptor, { namespace, shopUnits, results }) {
  const { name, purpose, gives, errors, source, example } = descriptor;
  const given = Object.entries(descriptor.arguments);
  const signature = given.map(([argument, { optional }]) => (optional ? `[${argument}]` : argument));
  return [
    `## ${name}`,
    `${purpose}.`,
    code(`${namespace}.${name}(${signature.join(', ')})`),
    table(['Argument', 'Meaning', 'When left out'], given.map(argumentRow)),
    ...given.flatMap(([argument, { choices }]) => (choices ? [choiceList(argument, choices)] : [])),
    `**Result.** ${gives}${unitOf(descriptor, shopUnits)}`,
    `**Errors.** ${errors || 'No others.'}`,
    `**Source.** ${source}`,
    `**Example.**`,
    `\`\`\`text\n${example}\n${shownResult(results[name])}\n\`\`\``,
  ].join('\n\n');
}

const argumentRow = ([name, { meaning, optional, omitted, dimensionality }]) => [
  code(name),
  `${textOf(meaning)}${dimensionality === 'matrix' ? ' (a range)' : ''}`,
  optional ? textOf(omitted ?? '') : 'must be given',
];

const choiceList = (argument, choices) =>
  [
    `Choices of ${code(argument)}:`,
    '',
    ...choices.map(({ value, meaning }) => `- ${code(value)}: ${textOf(meaning)}`),
  ].join('\n');

/** The unit of a plain quantity, where it has one and the text does not name it. */
function unitOf({ result, gives }, shopUnits) {
  const units = shopUnits[result];
  if (!units || units.in.name === '') return '';
  const { in: inch, mm } = units;
  if (gives.includes(inch.name) && gives.includes(mm.name)) return '';
  return inch.name === mm.name
    ? ` Unit: ${inch.name}.`
    : ` Unit: ${inch.name} (inch shop), ${mm.name} (mm shop).`;
}

/** A result as text: numbers with six digits, rows as lines, cells apart by a bar. */
export function shownResult(result) {
  if (result.error) return `${result.error.code} ${result.error.message}`.trim();
  if (!Array.isArray(result.value)) return shownCell(result.value);
  return result.value.map((row) => row.map(shownCell).join(' | ').trimEnd()).join('\n');
}

function shownCell(value) {
  if (typeof value === 'number') return String(Number(value.toPrecision(6)));
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'object' && value !== null ? value.code : String(value);
}
