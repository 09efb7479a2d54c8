import type { Tool } from './readTools.js';

/** Distances in mm that differ by rounding only are the same. */
const rounding = 1e-6;

/**
 * The tool with the least first merit, of those with the least second, and so on. Of tools that are alike in all of them
 * always the same is taken, whatever the order of the rows in the table.
 */
export function bestTool(
  tools: readonly Tool[],
  merits: (tool: Tool) => readonly (number | string)[],
): Tool | undefined {
  let best: { tool: Tool; merits: readonly (number | string)[] } | undefined;
  for (const tool of tools) {
    const own = [...merits(tool), Number(tool.press === undefined), contentOf(tool)];
    if (best === undefined || isLess(own, best.merits)) best = { tool, merits: own };
  }
  return best?.tool;
}

function isLess(a: readonly (number | string)[], b: readonly (number | string)[]): boolean {
  for (const [at, own] of a.entries()) {
    const other = b[at] ?? own;
    const differ =
      typeof own === 'number' && typeof other === 'number' ? Math.abs(own - other) > rounding : own !== other;
    if (differ) return own < other;
  }
  return false;
}

/** All that is meant by a tool; how its size is spelled makes no difference. */
function contentOf(tool: Tool): string {
  const content = Object.entries(tool).filter(([key]) => key !== 'written');
  return JSON.stringify(content.sort(([a], [b]) => (a < b ? -1 : 1)));
}
