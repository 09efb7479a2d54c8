import { verdictKind } from '../check/verdict.js';
import { type Failure, InputError } from '../inputError.js';
import type { CheckedPart } from '../row/checkRow.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import type { CheckedRow } from '../row/rowResult.js';
import { findPress } from '../shop/findPress.js';
import type { Shop } from '../shop/readShop.js';
import { cutSteps } from './cutSteps.js';
import { punchPasses } from './gaugeUse.js';
import { operationsOf } from './operations.js';
import type { OperatorStep, PlaceColumn } from './operatorStep.js';
import { punchSteps } from './punchSteps.js';
import { pullStock } from './pullStock.js';
import { bendSteps, clipSteps, notchSteps } from './sheetSteps.js';
import type { StepContext } from './stepContext.js';

/** The steps of a row, or why there are none. */
export type OperatorSteps =
  | { is: 'steps'; press?: string; steps: readonly OperatorStep[]; mind?: 'near limit' | 'open' }
  /** The word of the row is not one that is made; its reasons are in the checked row. */
  | { is: 'reasons' }
  /** Holes, or the work of these columns, have no given place: a read place is not printed as a dimension. */
  | { is: 'places not given'; groups: readonly number[]; columns: readonly PlaceColumn[] }
  /** A cell of the shop that the steps need cannot be read. */
  | { is: 'refused'; failure: Failure }
  | { is: 'blank' };

/**
 * What an operator does to make a row, in order: pull stock; for each operation lock out, tools, align, stripper, stroke,
 * gauges, first piece, run; deburr and mark; and the work that follows elsewhere.
 * @param checked the row and its part, as `checkedPart` gives them
 * @param shop the shop's presses, tools and settings
 * @returns the steps as data, lengths in mm; the reason where there are none: only a row that passes has steps, and of
 *   those that are OK so far only one that gives every place
 * Throws nothing for what a cell of the row or the shop holds.
 * Source: common practice, no source.
 */
export function operatorSteps({ result, part }: CheckedPart, shop: Shop): OperatorSteps {
  if (result.blank) return { is: 'blank' };
  if (!part || !isMade(result)) return { is: 'reasons' };
  try {
    return stepsOf(result, part, shop);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { is: 'refused', failure: error.failure };
  }
}

function isMade({ verdict }: CheckedRow): boolean {
  const kind = verdictKind(verdict);
  return kind === 'passes' || kind === 'open' || kind === 'elsewhere';
}

function stepsOf(result: CheckedRow, part: NonNullable<CheckedPart['part']>, shop: Shop): OperatorSteps {
  const { row, layouts } = part;
  const name = result.verdict === 'Off press' ? undefined : result.press;
  const press = name === undefined ? undefined : findPress(name, 'Press', shop);
  if (!press) {
    const route = result.route.map(
      (step): OperatorStep => ({ action: 'elsewhere', notes: [{ is: 'next', route: step }] }),
    );
    return { is: 'steps', steps: [...route, deburrAndMark(row.qty)] };
  }
  const operations = operationsOf(row, layouts.layouts[0], result.findings, press);
  const passes = punchPasses(operations, part, press, shop);
  const notGiven = passes.flatMap(({ gauges }) => gauges.flatMap((gauge) => gauge.notGiven));
  const isOpen = verdictKind(result.verdict) === 'open';
  const groups = [...new Set(notGiven.map(({ group }) => group))];
  const columns = columnsNotGiven(row);
  if (isOpen && groups.length + columns.length > 0) return { is: 'places not given', groups, columns };
  const context: StepContext = { row, layouts, result, press, shop };
  const steps: OperatorStep[] = [];
  let isPunched = false;
  for (const operation of operations) {
    if (operation.is === 'punch') {
      if (isPunched) continue;
      isPunched = true;
      for (const pass of passes) steps.push(...punchSteps(pass, context));
    } else if (operation.is === 'cut') steps.push(...cutSteps(operation, context));
    else if (operation.is === 'notch') steps.push(...notchSteps(operation, context));
    else if (operation.is === 'clip') steps.push(...clipSteps(operation, context));
    else if (operation.is === 'bend') steps.push(...bendSteps(operation, context));
    else {
      const action = steps.length === 0 ? 'elsewhere first' : 'elsewhere';
      steps.push({ action, notes: [{ is: 'next', route: operation.step }] });
    }
  }
  return {
    is: 'steps',
    press: press.name,
    ...(isOpen ? { mind: 'open' } : result.verdict === 'Near limit' ? { mind: 'near limit' } : {}),
    steps: [
      pullStock(
        context,
        operations.some(({ is }) => is === 'cut'),
      ),
      ...numbered(steps),
      deburrAndMark(row.qty),
    ],
  };
}

function columnsNotGiven({ notches, clips, bends }: ReadyRow): PlaceColumn[] {
  const blank = (column: PlaceColumn, work: { at?: readonly unknown[] } | undefined) =>
    work && work.at === undefined ? [column] : [];
  return [...blank('Notch at', notches), ...blank('Clip at', clips), ...blank('Bend at', bends)];
}

/** Gauge settings are counted through all punches of the row, as the drawing has them. */
function numbered(steps: readonly OperatorStep[]): OperatorStep[] {
  let setting = 0;
  return steps.map((step) => (step.action === 'gauge setting' ? { ...step, setting: (setting += 1) } : step));
}

function deburrAndMark(qty: number): OperatorStep {
  return { action: 'deburr and mark', notes: [{ is: 'pieces in all', count: qty }] };
}
