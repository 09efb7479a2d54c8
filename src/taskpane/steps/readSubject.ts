import { type Area, cellOf } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import type { Table } from '../../workbook/reading.js';
import { callArgument } from './callArgument.js';
import { callsUs } from '../../sheet/formula/ourCalls.js';
import { type FormulaCall, formulaCall } from '../../sheet/formula/formulaCall.js';
import { isPartsList } from '../shared/isPartsList.js';
import { tableAt } from './structuredReference.js';
import type { Subject, SubjectArgument } from './subject.js';

const nothing: Subject = { kind: 'nothing' };
/** How far above a spilled result its formula is looked for in the first rows of the sheet. */
const searchedRows = 20;

/** What the selected cell is about: a call of ours, a row of a list, or nothing of ours. */
export async function readSubject(workbook: Workbook): Promise<Subject> {
  const [selected] = await workbook.selection();
  if (!selected) return nothing;
  const cell = cellOf(selected, 0, 0);
  const tables = await workbook.tables();
  const [read] = await workbook.read([cell], ['formulas', 'text']);
  const formula = read?.formulas[0]?.[0];
  if (typeof formula === 'string' && callsUs(formula))
    return subjectOfFormula(workbook, formula, { cell, shown: read?.text[0]?.[0] ?? '' }, tables);
  return (await rowOfTable(workbook, cell, tables)) ?? (await rowOfSpill(workbook, cell, tables)) ?? nothing;
}

async function subjectOfFormula(
  workbook: Workbook,
  formula: string,
  { cell, shown }: { cell: Area; shown: string },
  tables: readonly Table[],
): Promise<Subject> {
  const call = formulaCall(formula);
  if (!call)
    return unclear(
      cell,
      'The formula does more than call one function. Put the call into a cell of its own to see its steps.',
    );
  if (call.name === 'LISTCHECK')
    return unclear(
      cell,
      'This is the formula of a whole list. Select a row of the list, or a result below, to see its steps.',
    );
  const given = await argumentsOf(workbook, call, cell, tables);
  if (typeof given === 'string') return unclear(cell, given);
  if (call.name === 'WORKING') {
    // Its steps are those of the function it shows.
    const [named, ...rest] = given;
    const name = String(named?.values[0]?.[0] ?? '')
      .trim()
      .toUpperCase()
      .replace(/^TONROW\./, '');
    return { kind: 'call', name, arguments: rest, cell, shown: '' };
  }
  if (call.name !== 'ROWCHECK') return { kind: 'call', name: call.name, arguments: given, cell, shown };
  const [headings, row] = given;
  return {
    kind: 'row',
    headings: headings?.values[0] ?? [],
    cells: row?.values[0] ?? [],
    area: row?.area ?? cell,
  };
}

function unclear(cell: Area, message: string): Subject {
  return { kind: 'unclear', message, cell };
}

/** The values of all arguments, read together; a sentence where one is a calculation. */
async function argumentsOf(
  workbook: Workbook,
  call: FormulaCall,
  cell: Area,
  tables: readonly Table[],
): Promise<SubjectArgument[] | string> {
  const written = call.arguments.map((text) => ({ text, argument: callArgument(text, cell, tables) }));
  const calculation = written.find(({ argument }) => argument.kind === 'calculation');
  if (calculation)
    return `The argument ${calculation.text.slice(0, 60)} is a calculation. Put it into a cell of its own to see the steps.`;
  const places = written.flatMap(({ argument }) => (argument.kind === 'place' ? argument.place : []));
  const answers = places.length > 0 ? await workbook.read(places, ['values']) : [];
  return written.map(({ text, argument }): SubjectArgument => {
    if (argument.kind === 'values') return { written: text, values: argument.values };
    const answer = answers.shift();
    return answer
      ? { written: text, values: answer.values, area: answer.area }
      : { written: text, values: [[null]] };
  });
}

/** The row of a parts list the cell stands in. */
async function rowOfTable(
  workbook: Workbook,
  cell: Area,
  tables: readonly Table[],
): Promise<Subject | undefined> {
  const table = tableAt(cell, tables);
  if (!table || cell.row === table.area.row || !isPartsList(table.headings, table.name)) return undefined;
  const area = { ...table.area, row: cell.row, rows: 1 };
  const [read] = await workbook.read([area], ['values']);
  return { kind: 'row', headings: table.headings, cells: read?.values[0] ?? [], area };
}

/** The row behind a spilled result of LISTCHECK: results stand in the order of the list. */
async function rowOfSpill(
  workbook: Workbook,
  cell: Area,
  tables: readonly Table[],
): Promise<Subject | undefined> {
  const above = {
    sheet: cell.sheet,
    row: 0,
    column: 0,
    rows: Math.min(cell.row, searchedRows),
    columns: cell.column + 1,
  };
  if (above.rows === 0) return undefined;
  const [read] = await workbook.read([above], ['formulas']);
  for (const [row, formulas] of (read?.formulas ?? []).entries()) {
    for (const formula of formulas) {
      const call = typeof formula === 'string' ? formulaCall(formula) : undefined;
      if (call?.name !== 'LISTCHECK') continue;
      const given = await argumentsOf(
        workbook,
        { ...call, arguments: call.arguments.slice(0, 1) },
        cell,
        tables,
      );
      const list = typeof given === 'string' ? undefined : given[0];
      const down = cell.row - row;
      const [headings] = list?.values ?? [];
      const cells = list?.values[down];
      if (headings && cells && list?.area)
        return { kind: 'row', headings, cells, area: { ...list.area, row: list.area.row + down, rows: 1 } };
    }
  }
  return undefined;
}
