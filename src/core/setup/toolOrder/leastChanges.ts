/**
 * A number of changes that no order of some marks goes below, where each is finished before the next.
 *
 * Formula: Σ (k − 1) + n − 1 − L, and not below K − 1; k the tools of a mark, n the marks, K the different tools, L at
 *   least as many as the times that a mark can begin with the tool that the one before ended with. Marks of one and the
 *   same tool count as one. L is the least of: the ends of marks that others share a tool with, over 2; the sum over
 *   the tools of the pairs that a tool can join, where a mark of several tools has each of them at one end only; n less
 *   the number of groups of marks that share nothing.
 * @param marks the tools of each mark, by any keys, each key once
 * @returns the number of changes
 * Valid for any number of marks.
 * Source: counting, no source.
 */
export function leastChanges(marks: readonly (readonly string[])[]): number {
  const alone = new Set(marks.filter(({ length }) => length === 1).map(([tool]) => tool ?? ''));
  const several = marks.filter(({ length }) => length > 1);
  const users = new Map<string, number>();
  for (const tool of several.flat()) users.set(tool, (users.get(tool) ?? 0) + 1);
  const tools = new Set([...alone, ...users.keys()]);
  const count = alone.size + several.length;
  if (count === 0) return 0;
  const joins = [...tools].map((tool) => joinsBy(users.get(tool) ?? 0, alone.has(tool)));
  const shared = (tool: string) => (users.get(tool) ?? 0) + Number(alone.has(tool)) > 1;
  const ends =
    sum(several.map((own) => Math.min(2, own.filter(shared).length))) +
    sum([...alone].map((tool) => Math.min(2, users.get(tool) ?? 0)));
  const most = Math.min(Math.floor(ends / 2), sum(joins), count - groups(several, alone));
  const within = sum(several.map(({ length }) => length - 1));
  return Math.max(within + count - 1 - most, tools.size - 1);
}

/** How many pairs of neighbors one tool can join: each mark of several tools has it at one end, a mark of one tool at both. */
function joinsBy(users: number, hasOwnMark: boolean): number {
  return hasOwnMark ? Math.min(users, Math.floor((users + 2) / 2)) : Math.floor(users / 2);
}

/** How many groups of marks there are that share no tool. */
function groups(several: readonly (readonly string[])[], alone: ReadonlySet<string>): number {
  const group = new Map<string, string>();
  const top = (tool: string): string => {
    const above = group.get(tool) ?? tool;
    return above === tool ? tool : top(above);
  };
  for (const own of several) for (const tool of own) group.set(top(tool), top(own[0] ?? tool));
  const tools = new Set([...alone, ...several.flat()]);
  return new Set([...tools].map(top)).size;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
