import type { Formula } from './nodes.js';
import type { Scope } from './scope.js';

export const noFunctions: ReadonlySet<string> = new Set();
const singles = new Map<string, ReadonlySet<string>>();

/** Most formulas use one function at most: those share their sets. */
function withFunction(functions: ReadonlySet<string>, name: string): ReadonlySet<string> {
  if (functions.has(name)) return functions;
  if (functions.size > 0) return new Set([...functions, name]);
  const single = singles.get(name) ?? new Set([name]);
  singles.set(name, single);
  return single;
}

const dynamicFunctions = new Set(['INDIRECT', 'OFFSET']);

/** Notes that a formula calls a function, by the name people use. */
export function noteFunction(formula: Formula, name: string, { namespace, ours }: Scope): void {
  if (name === 'SINGLE' || name === 'ANCHORARRAY') return;
  if (!name.startsWith(`${namespace}.`)) {
    formula.functions = withFunction(formula.functions, name);
    if (dynamicFunctions.has(name)) formula.dynamic = true;
  } else if (ours.has(name.slice(namespace.length + 1))) formula.ours = true;
  else formula.unsupported ??= `It uses ${name}, which this edition of ${namespace} does not have.`;
}
