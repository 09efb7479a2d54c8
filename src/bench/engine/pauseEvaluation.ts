import type { Model } from '@odoo/o-spreadsheet';

/** The part of the engine that evaluates, at the end of every command. */
interface Evaluating {
  positionsToUpdate: unknown[];
  shouldRebuildDependenciesGraph: boolean;
  finalize(): void;
}

/**
 * Lets the engine collect what is to be evaluated while many cells are written in several commands. Where rows,
 * columns or sheets come it still evaluates at once: its values would stand in the wrong cells. Gives what ends it;
 * the next command then evaluates all that was collected.
 */
export function pauseEvaluation(model: Model): () => void {
  const { handlers } = model as unknown as { handlers: object[] };
  const plugin = handlers.find((each) => 'positionsToUpdate' in each) as Evaluating | undefined;
  if (!plugin) return () => undefined;
  const { finalize } = plugin;
  Object.assign(plugin, {
    finalize: () => {
      if (plugin.shouldRebuildDependenciesGraph) finalize.call(plugin);
    },
  });
  return () => void Reflect.deleteProperty(plugin, 'finalize');
}
