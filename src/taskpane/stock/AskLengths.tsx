import { Button, Input } from '@fluentui/react-components';
import type { FormEvent } from 'react';
import { InputError } from '../../core/inputError.js';
import { readStock } from '../../core/shop/readStock.js';
import { boughtName } from '../../core/stock/list/planWords.js';
import type { StockJob } from '../../core/stock/list/stockJob.js';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import { PaneField } from '../shared/PaneField.js';
import type { ShopTable } from '../shared/shopState.js';
import { shortText } from '../shared/shortText.js';
import { useKept } from '../shared/useKept.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { jobName } from './jobName.js';
import { addStockLines, stockHeadings, type StockLine } from './stockTable.js';

interface Props {
  workbook: Workbook;
  shop: ReadyShop;
  table: ShopTable | undefined;
  job: StockJob;
}

/** Asks for the lengths that bars of a section come in, and puts them into the Stock table. */
export function AskLengths({ workbook, shop, table, job }: Props) {
  const propose = usePropose();
  const typed = useKept(`lengths of ${job.key}`, () => '');
  const lines = linesOf(typed.value, job);
  const problem = typed.value.trim() === '' ? undefined : problemOf(lines, shop);
  const title = `Add to the Stock table: ${jobName(job)}`;
  const make = async () => {
    const steps = await addStockLines(workbook, shop, table, lines);
    return typeof steps === 'string' ? steps : { title, steps, written: () => typed.set('') };
  };
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (lines.length > 0 && problem === undefined) propose({ title, make });
  };
  return (
    <form onSubmit={add} noValidate style={{ display: 'flex', gap: 8, alignItems: 'end', flexWrap: 'wrap' }}>
      <PaneField
        label={`Lengths of ${jobName(job)}`}
        hint={shop.shop.unit === 'in' ? 'such as 20 ft, 40 ft' : 'such as 6000, 12000'}
        style={{ flex: '1 1 160px' }}
        {...(problem === undefined ? {} : { validationMessage: shortText(problem, 200) })}
      >
        <Input value={typed.value} onChange={(_, { value }) => typed.set(value)} />
      </PaneField>
      <Button type="submit">Add to the Stock table</Button>
    </form>
  );
}

/** A row for each length, with the section and grade of the job. */
function linesOf(typed: string, job: StockJob): StockLine[] {
  const lengths = typed.split(/[,;]/).map((text) => text.trim());
  return lengths.filter((text) => text !== '').map((length) => [boughtName(job), job.grade.name, length]);
}

/** Why the rows cannot be read; undefined where they can. */
export function problemOf(lines: readonly StockLine[], { shop }: ReadyShop): string | undefined {
  const cells = lines.map((line) => stockHeadings.map((_, at) => line[at]?.trim() || null));
  try {
    return readStock([stockHeadings, ...cells], shop).unread[0]?.sentence.replace(/^Stock row \d+, /, '');
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}
