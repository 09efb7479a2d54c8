import { describe, expect, it } from 'vitest';
import { toolOrderWords } from '../../../src/core/say/toolOrderWords.js';
import type { ToolSet } from '../../../src/core/setup/toolOrder/changes.js';
import { toolOrder } from '../../../src/core/setup/toolOrder/toolOrder.js';
import type { Tool } from '../../../src/core/shop/readTools.js';
import type { ListToolOrder } from '../../../src/core/work/listToolOrder.js';
import { longJob } from '../setup/toolOrder/randomMarks.js';

const tool = (holder?: string): Tool => ({
  kind: 'punch',
  size: { shape: 'round', diameterMm: 18 },
  count: 1,
  ...(holder === undefined ? {} : { holder }),
});

function words(marks: readonly (readonly ToolSet[])[], more: Partial<ListToolOrder> = {}): string {
  const list: ListToolOrder = {
    marks: marks.map((_, at) => `M${at + 1}`),
    order: toolOrder(marks),
    pairOf: ({ holder }) => ({ punch: tool(holder === '' ? undefined : holder), die: tool() }),
    left: [],
    elsewhere: 0,
    notPunched: 0,
    noParts: 0,
    otherTools: 0,
    withoutHolder: [],
    ...more,
  };
  return toolOrderWords(list, 'Bay A', 'mm');
}

describe('what an order of tools takes, in words', () => {
  it('tells how far a long order may be from the best', () => {
    const marks = longJob(60, 3, 20);
    const { byMark, byTool } = toolOrder(marks);
    const { changes, least } = byMark;
    expect(changes.tools).toBeGreaterThan(least.tools);
    expect(words(marks)).toBe(
      `All marks of a tool before the next tool, with ${byTool.changes.holders} changes of holder and ` +
        `${byTool.changes.tools} changes of tools: no order has fewer. Finishing each mark before the next takes ` +
        `${changes.holders} changes of holder and ${changes.tools} changes of tools; at least ${least.holders} ` +
        `changes of holder and ${least.tools} changes of tools are needed.`,
    );
  });

  it('counts one as one', () => {
    const [a, b] = [
      { holder: 'S', punch: 'a', die: 'a' },
      { holder: 'M', punch: 'b', die: 'b' },
    ];
    expect(
      words([[a], [b]], {
        left: [{ mark: 'X', verdict: 'No tool' }],
        elsewhere: 1,
        notPunched: 1,
        noParts: 2,
      }),
    ).toBe(
      '1 change of holder and 1 change of tools: no order has fewer. 1 mark is left out; why stands beside the mark. ' +
        '1 mark is on another press. 1 mark has nothing to punch. 2 rows are no parts: not in the order.',
    );
  });

  it('of holders that are not named counts only tools', () => {
    const sets = ['a', 'b', 'c'].map((key) => [{ holder: '', punch: key, die: key }]);
    expect(words(sets, { withoutHolder: [tool()] })).toBe(
      '2 changes of tools: no order has fewer. The Tools table names no holder for these punches, so changes of holder are not counted.',
    );
  });
});
