import type { Changes } from '../setup/toolOrder/changes.js';
import type { ToolOrder } from '../setup/toolOrder/toolOrder.js';
import type { LengthUnit } from '../quantity/units.js';
import { toolText } from '../shop/toolText.js';
import type { ListToolOrder } from '../work/listToolOrder.js';
import { listWords } from './listWords.js';

/** What an order of the marks takes, whether there is a better one, and what is not in it. */
export function toolOrderWords(list: ListToolOrder, press: string, unit: LengthUnit): string {
  const { marks, order, left, elsewhere, notPunched, noParts } = list;
  const sentences =
    marks.length === 0
      ? [`No mark of the list is punched on ${press}.`]
      : [...changesWords(order, isHolderNamed(list)), holderWords(list, unit)];
  if (left.length > 0)
    sentences.push(`${marksDo(left.length, 'is', 'are')} left out; why stands beside the mark.`);
  if (elsewhere > 0) sentences.push(`${marksDo(elsewhere, 'is', 'are')} on another press.`);
  if (notPunched > 0) sentences.push(`${marksDo(notPunched, 'has', 'have')} nothing to punch.`);
  if (noParts > 0)
    sentences.push(
      `${noParts === 1 ? '1 row is no part' : `${noParts} rows are no parts`}: not in the order.`,
    );
  return sentences.filter((each) => each !== '').join(' ');
}

function changesWords({ byMark, byTool, better }: ToolOrder, withHolders: boolean): string[] {
  const several = byMark.operations.length > new Set(byMark.operations.map(({ mark }) => mark)).size;
  const words = (counted: Changes) => changesOf(counted, withHolders);
  // No way of working takes fewer changes than all marks of a tool at once.
  const fewest = `${words(better === 'tool' ? byTool.changes : byMark.changes)}: no order has fewer.`;
  if (!several) return [capital(fewest)];
  if (better === 'mark') return [`Each mark is finished before the next, with ${fewest}`];
  const { changes, least } = byMark;
  const isFewest = changes.holders === least.holders && changes.tools === least.tools;
  const bound = isFewest ? '' : `; at least ${words(least)} are needed`;
  return [
    `All marks of a tool before the next tool, with ${fewest}`,
    `Finishing each mark before the next takes ${words(changes)}${bound}.`,
  ];
}

function changesOf({ holders, tools }: Changes, withHolders: boolean): string {
  const ofTools = `${counted(tools)} of tools`;
  return withHolders ? `${counted(holders)} of holder and ${ofTools}` : ofTools;
}

function isHolderNamed({ order, pairOf }: ListToolOrder): boolean {
  return order.byMark.operations.some(({ set }) => pairOf(set)?.punch.holder !== undefined);
}

function holderWords(list: ListToolOrder, unit: LengthUnit): string {
  if (list.withoutHolder.length === 0) return '';
  if (!isHolderNamed(list)) {
    return 'The Tools table names no holder for these punches, so changes of holder are not counted.';
  }
  const texts = list.withoutHolder.map((tool) => toolText(tool, unit));
  return `Holder is blank for punch ${listWords(texts)}: counted as a holder of its own.`;
}

function counted(count: number): string {
  return `${count} ${count === 1 ? 'change' : 'changes'}`;
}

function marksDo(count: number, one: string, several: string): string {
  return count === 1 ? `1 mark ${one}` : `${count} marks ${several}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
