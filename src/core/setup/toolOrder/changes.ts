/** The tools of one operation at the punch station, by their keys: equal keys are the same tool. */
export interface ToolSet {
  /** The sleeve or stem family of the punch. */
  holder: string;
  punch: string;
  die: string;
}

/** What is changed on the way: a change of punch or die or both is one change of tools, one of holder is one, too. */
export interface Changes {
  holders: number;
  tools: number;
}

/*
 * Changes are compared by holders first, then by tools, then by the punches and dies taken out and put in, so that a
 * punch stays in where only its die is changed. All three stand in one number.
 */
const perTool = 2 ** 17;
const perHolder = 2 ** 34;

/** What it costs to change from one set to another; 0 for the same set. */
export function changeCost(from: ToolSet, to: ToolSet): number {
  const pieces = Number(from.punch !== to.punch) + Number(from.die !== to.die);
  const holders = Number(from.holder !== to.holder);
  const tools = holders > 0 || pieces > 0 ? 1 : 0;
  return holders * perHolder + tools * perTool + pieces;
}

/** The changes that a cost stands for. */
export function changesOf(cost: number): Changes {
  return { holders: Math.floor(cost / perHolder), tools: Math.floor((cost % perHolder) / perTool) };
}
