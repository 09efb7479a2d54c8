import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { StoredValue } from '../../../src/sheet/cellValue.js';
import { conformanceCases } from './data.js';

/*
 * One call of every function of the conformance table, with each of its arguments in turn replaced by something odd, and
 * what a headless desktop spreadsheet computes for it (oddValues.tsv, made by tests/referee).
 */

/** An error, a blank cell, texts with and without a number, a truth value, nothing, below nothing, a fraction. */
const odd = ['1/0', 'H3', '""', '"3"', '"abc"', 'TRUE', '0', '-1', '2.7'];
/** The day before the one that the host counts and the calendar lacks, and that one. */
const earlyDays = ['59', '60'];
/** The referee is too old for it. */
const unknownToReferee = new Set(['XLOOKUP']);

interface Call {
  name: string;
  args: readonly string[];
}

/** The call a formula consists of; undefined for one that is more or less than that. */
function callOf(text: string): Call | undefined {
  const [, name = '', inside] = /^([A-Z][A-Z0-9.]*)\((.*)\)$/.exec(text) ?? [];
  if (inside === undefined) return undefined;
  const args: string[] = [''];
  let [depth, quoted] = [0, false];
  for (const character of inside) {
    if (character === '"') quoted = !quoted;
    if (!quoted) depth += Number(character === '(') - Number(character === ')');
    if (depth < 0) return undefined;
    if (character === ',' && depth === 0 && !quoted) args.push('');
    else args.push(`${args.pop()}${character}`);
  }
  return { name, args: inside === '' ? [] : args };
}

/** The formulas, in order: the call of each function that has most arguments in the table, varied. */
export function oddFormulas(): string[] {
  const longest = new Map<string, Call>();
  for (const { formula, referee } of conformanceCases()) {
    const call = callOf(formula);
    if (!call || referee !== formula || unknownToReferee.has(call.name)) continue;
    const before = longest.get(call.name);
    if (!before || before.args.length < call.args.length) longest.set(call.name, call);
  }
  const formulas = [...longest.values()].flatMap(({ name, args }) =>
    args.flatMap((own, at) =>
      [...odd, ...(/^F[23]$/.test(own) ? earlyDays : [])].map(
        (each) => `${name}(${args.map((arg, other) => (other === at ? each : arg)).join(',')})`,
      ),
    ),
  );
  return [...new Set(formulas)];
}

export const oddValuesFile = path.join(import.meta.dirname, 'oddValues.tsv');

/** The formulas with the referee's values. */
export function oddCases(): { formula: string; value: StoredValue }[] {
  return readFileSync(oddValuesFile, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [formula = '', value = 'null'] = line.split('\t');
      return { formula, value: JSON.parse(value) as StoredValue };
    });
}
