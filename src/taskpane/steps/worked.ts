import { InputError } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { plainText } from '../../core/quantity/cellValue.js';
import { checkedPart } from '../../core/row/checkRow.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { lengthAsTyped } from '../../core/row/lengthAsTyped.js';
import { readRow } from '../../core/row/readRow.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { RowResult } from '../../core/row/rowResult.js';
import { otherRowNote } from '../../core/say/otherRow.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type OperatorSteps, operatorSteps } from '../../core/work/operatorSteps.js';
import { type RowWorkResult, workOnChecked } from '../../core/work/workOnRow.js';
import { type Step, Working } from '../../core/working/working.js';
import { functionWorkings, type WorkedCall } from './functionWorkings.js';
import type { Subject } from './subject.js';

export interface WorkedRow {
  mark: string;
  job: RowJob;
  /** The length as it is typed, with its unit. */
  length: string;
  result: Extract<RowResult, { blank: false }>;
  /** How the press is set for it. */
  setup: OperatorSteps;
  work: RowWorkResult;
  /** Of the checks, then of time and cost. */
  steps: readonly Step[];
}

/** The working of a row, from the check itself; a sentence where there is none. */
export function workedRow(
  headings: readonly CellValue[],
  cells: readonly CellValue[],
  shop: Shop,
): WorkedRow | string {
  try {
    const read = readHeadings(headings);
    const working = new Working();
    const checked = checkedPart(cells, read, shop, working);
    const { result } = checked;
    if (result.blank)
      return otherRowNote(result, shop.unit) || 'This row is blank or a total: there is nothing to check.';
    const mark = plainText(String(cells[read.fields.mark?.at ?? -1] ?? ''));
    const job = readRow(cells, read, shop);
    const work = workOnChecked(checked, shop, working);
    const length = lengthAsTyped(cells, read, job.lengthMm, shop.unit);
    return { mark, job, length, result, setup: operatorSteps(checked, shop), work, steps: working.steps };
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}

/** The working of a call, from the functions of this runtime; a sentence where it was refused or they are not here. */
export function workedCall({
  name,
  arguments: given,
}: Extract<Subject, { kind: 'call' }>): WorkedCall | string | Promise<WorkedCall | string> {
  const workings = functionWorkings();
  if (!workings)
    return `The functions are not loaded in this pane. Write =TONROW.WORKING("${name}",…) with the same arguments into a free cell to see the steps.`;
  try {
    const worked = workings.workingOf(
      name,
      given.map(({ written, values }) => (written === '' ? null : values)),
    );
    return worked instanceof Promise ? worked.catch(sentenceOf) : worked;
  } catch (error) {
    return sentenceOf(error);
  }
}

const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
