import { Text } from '@fluentui/react-components';
import { readTools } from '../../../core/shop/readTools.js';
import type { ShopPartProps } from '../sheet/readyShop.js';
import { toolHeadings } from '../sheet/starter.js';
import { addToList } from './addToList.js';
import type { ListColumn } from './listColumn.js';
import { RowList } from './RowList.js';

/** The punches and dies on hand. */
export function ToolList({ workbook, shop }: ShopPartProps) {
  const { unit, presses } = shop.shop;
  const problem = (values: readonly string[]) =>
    values.every((value) => value.trim() === '')
      ? undefined
      : // There is one row here, and it has no number yet.
        readTools([toolHeadings, values], unit)?.problems[0]?.problem;
  return (
    <>
      <Text>
        {shop.tables.tools
          ? 'Punches and dies on hand. A hole with no matching punch and die is No tool.'
          : 'The shop has no tool list, so tools are not checked. The first tool you add starts one: from then on a hole with no matching punch and die is No tool.'}
      </Text>
      <RowList
        what="tool"
        columns={columnsFor(presses.map(({ name }) => name))}
        table={shop.tables.tools}
        problem={problem}
        describe={(value) =>
          [
            value('Press') || 'any',
            value('Kind'),
            value('Shape'),
            [value('Size'), value('Length')].filter(Boolean).join(' x '),
            value('Holder') && `holder ${value('Holder')}`,
            value('Height') && `${value('Height')} high`,
          ]
            .filter(Boolean)
            .join(' · ')
        }
        add={(values) => addToList(workbook, shop, 'tools', toolHeadings, values)}
      />
    </>
  );
}

function columnsFor(presses: readonly string[]): ListColumn[] {
  const more: Record<string, Omit<ListColumn, 'heading'>> = {
    Press: { choices: ['any', ...presses] },
    Kind: { choices: ['punch', 'die'] },
    Shape: { choices: ['round', 'square', 'rectangle', 'slot', 'hexagon'], hint: 'round when blank' },
    Size: { hint: 'of a die, its opening' },
    Length: { hint: 'of a slot or rectangle' },
    Holder: { hint: 'the sleeve or stem family of a punch' },
    Height: { hint: 'of a punch, from the face that carries it to its tip' },
    Count: { hint: 'one when blank' },
  };
  return toolHeadings.map((heading) => ({ heading, ...more[heading] }));
}
