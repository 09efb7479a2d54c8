// A general library works out the formulas that a working prints, from the values it prints.
import type { MathNode, SymbolNode } from 'mathjs/number';
import { expect } from 'vitest';
import type { NamedValue, Step } from '../../src/core/working/working.js';

type Library = Pick<typeof import('mathjs/number'), 'evaluate' | 'parse'>;
let library: Library | undefined;

/** Before all tests that ask the referee: it takes longer to load than to be asked. */
export async function openFormulaReferee(): Promise<void> {
  library ??= await import('mathjs/number');
}

function opened(): Library {
  if (!library) throw new Error('Call openFormulaReferee before all tests of the file.');
  return library;
}

/** `l = 2 · √(d² + (w / 2)²)` as the library writes it; what stands before the first = is the result. */
function expressionOf(formula: string): string {
  const [, right = '', least, most] =
    /^[^=]+ = (.*?)(?:, at least ([\d.]+))?(?:, at most ([\d.]+ ?(?:mm|in)?))?$/.exec(formula) ?? [];
  const written = right
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('√', 'sqrt')
    .replaceAll('2⅔', '(8 / 3)')
    .replaceAll(/⌈([^⌉]*)⌉/g, 'ceil($1)')
    .replaceAll(/(tan|cos) (\S+?)(?=[)\s]|$)/g, '$1($2)')
    .trim();
  const above = least === undefined ? written : `max(${least}, ${written})`;
  const within = most === undefined ? above : `min(${most}, ${above})`;
  return within.replaceAll(/(\d) mm/g, '$1').replaceAll(/(\d) in/g, '$1 * 25.4');
}

function namesIn(expression: string): string[] {
  const isName = (node: MathNode, path: string): node is SymbolNode =>
    node.type === 'SymbolNode' && path !== 'fn';
  return [
    ...new Set(
      opened()
        .parse(expression)
        .filter(isName)
        .map((node) => (node as SymbolNode).name),
    ),
  ];
}

/**
 * The formula of a step, worked out from its values, gives its result, and its values are those it uses, besides the
 * `besides`. Returns the step, so that more can be asked of it.
 */
export function expectFormula(step: Step | undefined, besides: readonly string[] = []): Step {
  if (!step) throw new Error('There is no such step.');
  const { formula, values, result } = step;
  const expression = expressionOf(formula);
  const sizes = Object.fromEntries(
    values.filter(({ kind }) => kind !== 'text').map(({ symbol, value }) => [symbol, value]),
  );
  expect([formula, Object.keys(sizes).sort()]).toEqual([
    formula,
    [...namesIn(expression), ...besides].sort(),
  ]);
  expect([formula, result.symbol]).toEqual([formula, formula.split(' = ')[0]]);
  const size = Number(opened().evaluate(expression, sizes));
  expect(Math.abs(size - Number(result.value))).toBeLessThanOrEqual(1e-12 * Math.abs(size));
  for (const value of [...values, result]) expectWhole(value);
  return step;
}

/** A value says what it is. */
function expectWhole({ symbol, meaning, kind }: NamedValue): void {
  expect([symbol, meaning, kind]).toEqual([
    expect.any(String),
    expect.stringMatching(/\w/),
    expect.stringMatching(/\w/),
  ]);
}

/** A step by a formula is worked out; one by a table or a rule in words shows what is looked up, and whole values. */
export function expectStep(step: Step): void {
  const { formula, values, result } = step;
  if (/^\w+ = /.test(formula)) {
    expectFormula(step);
    return;
  }
  expect([formula, values]).toEqual([formula, expect.arrayContaining([expect.anything()])]);
  for (const value of [...values, result]) expectWhole(value);
}
