import { Text } from '@fluentui/react-components';
import { stockColumns } from '../../core/shop/readStock.js';
import type { Workbook } from '../../workbook/port.js';
import type { ShopTable } from '../shared/shopState.js';
import type { ListColumn } from '../shop/lists/listColumn.js';
import { RowList } from '../shop/lists/RowList.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { problemOf } from './AskLengths.js';
import { addStockLines, stockHeadings } from './stockTable.js';

const columns: readonly ListColumn[] = stockColumns.map(({ name, meaning }) => ({
  heading: name,
  hint: meaning.replaceAll('`', ''),
}));

interface Props {
  workbook: Workbook;
  shop: ReadyShop;
  table: ShopTable | undefined;
}

/** The Stock table of the shop, row by row. */
export function StockList({ workbook, shop, table }: Props) {
  return (
    <>
      <Text>
        {table
          ? `The table ${table.table ?? ''} on the sheet ${table.area.sheet}: lengths that can be bought.`
          : 'There is no Stock table yet. With the first length it is made on the shop sheet.'}
      </Text>
      <RowList
        what="stock length"
        columns={columns}
        table={table}
        problem={(values) =>
          values.every((value) => value.trim() === '') ? undefined : problemOf([values], shop)
        }
        describe={(value) =>
          stockHeadings
            .map((heading) => value(heading))
            .filter((text) => text !== '')
            .join(' · ')
        }
        add={(values) => addStockLines(workbook, shop, table, [values])}
      />
    </>
  );
}
