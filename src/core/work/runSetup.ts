import type { Press } from '../press/press.js';
import { setting } from '../shop/setting.js';
import type { Shop } from '../shop/readShop.js';
import type { Working } from '../working/working.js';
import type { ListToolOrder } from './listToolOrder.js';
import { pressRate } from './rates.js';

/** What setting up the tools of a whole run takes, once. */
export interface RunSetup {
  /** Sets of tools set up, those that begin the run and those of notcher and bend among them. */
  toolChanges: number;
  /** Holders set up, the first one among them. */
  holderChanges: number;
  /** With the efficiency of the shop. */
  seconds: number;
  /** Items that stand in it and that the shop has not given. */
  invented: readonly string[];
  /** The rows leave their changes to the run. */
  shared: boolean;
}

/**
 * The time of all changes of tools of a run, once: its marks in the order with the fewest changes, the tools it begins with
 * set up, too, as a row counts its own. Notcher and bend are set up once each.
 *
 * Formula: t = (n · tool change + h · holder change) / η
 * @param list the marks of the run by their tools
 * @param press the press of the run
 * @param shop the shop with its times
 * @param working collects the step when given
 * @returns the changes, and their time in seconds
 * Valid for every list; the time is 0 where nothing needs tools. Throws `invalid` where a time of the press cannot be read.
 * @example runSetup(listToolOrder(list, press, shop), press, shop).seconds
 * Source: common practice, no source.
 */
export function runSetup(list: ListToolOrder, press: Press, shop: Shop, working?: Working): RunSetup {
  const { byMark, byTool, better } = list.order;
  const { operations, changes } = better === 'tool' ? byTool : byMark;
  const [first] = operations;
  const toolChanges = changes.tools + (first ? 1 : 0) + list.otherTools;
  const holderChanges = changes.holders + (first && first.set.holder !== '' ? 1 : 0);
  const [tool, holder] = [pressRate(press, 'toolChange'), pressRate(press, 'holderChange')];
  const efficiency = setting(shop, 'efficiency');
  const seconds = (toolChanges * tool.seconds + holderChanges * holder.seconds) / efficiency;
  const counted = [
    { ...tool, count: toolChanges },
    { ...holder, count: holderChanges },
  ];
  const invented = counted.filter((each) => each.invented && each.count > 0).map(({ item }) => item);
  working?.step({
    title: 'Changes of the run',
    formula: 't = (n · s + h · c) / η',
    values: [
      { symbol: 'n', meaning: 'tools set up', kind: 'count', value: toolChanges },
      { symbol: 's', meaning: tool.item, kind: 'seconds', value: tool.seconds },
      { symbol: 'h', meaning: 'holders set up', kind: 'count', value: holderChanges },
      { symbol: 'c', meaning: holder.item, kind: 'seconds', value: holder.seconds },
      { symbol: 'η', meaning: 'efficiency', kind: 'ratio', value: efficiency },
    ],
    result: { symbol: 't', meaning: 'time of the changes of the run', kind: 'minutes', value: seconds },
    source: 'the times of the press and the shop; common practice, no source',
    ...(invented.length === 0
      ? {}
      : { cautions: [`Invented until the shop gives its own: ${invented.join(', ')}.`] }),
  });
  return {
    toolChanges,
    holderChanges,
    seconds,
    invented,
    shared: setting(shop, 'setup') === 'shared over a run',
  };
}
