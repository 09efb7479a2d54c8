import { FormulaCalculator, type LoadedFunctions } from '../../src/headless/index.js';
import { supportedFunctions } from '../../src/headless/engine/supportedFunctions.js';
import { type FuzzKind, thrown } from './kind.js';
import type { Random } from './random.js';
import { fuzzText } from './values.js';

const operators = ['+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>=', ':', ' ', ',', '%'];
const references = [
  'A1',
  'XFD1048576',
  'A:A',
  '1:3',
  '$B$2:C4',
  "'x y'!A1",
  'T[Mark]',
  'T[[#All],[a]:[b]]',
  'A1#',
  '[1]S!A1',
  'nope',
  'R1C1',
];
const literals = [
  '1',
  '0',
  '-3.5',
  '1E300',
  '1E-320',
  '"a"',
  '""',
  '"*a?~*"',
  'TRUE',
  '#N/A',
  '#REF!',
  '{1,2;3,4}',
  '{"a",TRUE,#N/A}',
  '1E9',
  '2^31',
];
const characters = [...`()[]{},;:"'#@%&*+-/<=>^ !$.\u00a0\n\ud83d0aé_\\`];

function expression(random: Random, names: readonly string[], depth: number): string {
  const kind = depth <= 0 ? random.below(3) : random.below(8);
  const inner = () => expression(random, names, depth - 1);
  if (kind < 2) return random.pick(literals);
  if (kind === 2)
    return random.chance(0.5) ? random.pick(references) : `"${fuzzText(random).replaceAll('"', '""')}"`;
  if (kind === 3) return `${inner()}${random.pick(operators)}${inner()}`;
  if (kind === 4) return `${random.pick(['-', '+', '@', '('])}${inner()}${random.pick(['', '%', ')'])}`;
  return `${random.pick(names)}(${random.times(4, inner).join(',')})`;
}

/** Formulas: well made of known functions, then with characters lost and added. */
export async function formulaCalls(functions: LoadedFunctions): Promise<FuzzKind> {
  const desk = await FormulaCalculator.over(undefined, functions);
  const ours = [...functions.byName.keys()].filter((name) => !name.startsWith('STOCK'));
  const names = [
    ...supportedFunctions,
    'LET',
    'LAMBDA',
    'OFFSET',
    ...ours.map((name) => `${functions.namespace}.${name}`),
  ];
  return {
    name: 'formulas',
    async call(random, keep) {
      let text = expression(random, names, 1 + random.below(5));
      while (random.chance(0.25)) {
        const at = random.below(text.length + 1);
        text =
          text.slice(0, at) +
          random.times(2, () => random.pick(characters)).join('') +
          text.slice(at + random.below(3));
      }
      if (random.chance(0.02)) text = random.pick(characters).repeat(random.below(8_200)) + text;
      keep(`=${text}`);
      try {
        const result = await desk.evaluate(`=${text}`);
        if ('error' in result) {
          const { code, message } = result.error;
          if (!/^#[A-Z/0_]+[!?A]$/.test(code)) return `gives the code ${code}`;
          if (message?.includes('fault of Tonrow')) return message;
        } else if (typeof result.value === 'number' && !Number.isFinite(result.value))
          return `gives ${result.value}`;
        else if (result.value === undefined || result.value === null) return 'gives nothing';
      } catch (error) {
        return thrown(error);
      }
      return undefined;
    },
  };
}
