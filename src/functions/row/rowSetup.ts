import { sentenceInCell } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { type CheckedPart, checkedPart } from '../../core/row/checkRow.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { noteOf } from '../../core/say/noteOf.js';
import { otherRowNote } from '../../core/say/otherRow.js';
import { placesNotGiven, stepNotes, stepTitle, wayWords } from '../../core/say/stepWords.js';
import { type OperatorSteps, operatorSteps } from '../../core/work/operatorSteps.js';
import type { OperatorStep } from '../../core/work/operatorStep.js';
import type { Working } from '../../core/working/working.js';
import { shopArgument } from '../argument/shop.js';
import { rangeArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { oneRow } from './oneRow.js';

const titles = [
  ...['Step', 'Station', 'Mode', 'Punch', 'Die', 'Stop', 'Fence', 'Turn', 'Upper', 'Lower', 'Hits', 'Note'],
];

export const rowSetup = define({
  name: 'ROWSETUP',
  purpose: 'What an operator does to make a row of a parts list, in order',
  arguments: {
    headings: rangeArgument('The row of headings: Mark, Qty, Section, Grade, Length, Hole …'),
    row: rangeArgument('The row of the part, the same columns'),
    shop: shopArgument,
  },
  result: 'cells',
  gives:
    'A heading row, then a row for each step: stop and fence from the punch center, upper and lower from the top of the die, hits a piece, in the units of the shop. A row that is not to be made has its reasons instead.',
  errors: '#VALUE! when the headings have no Section column or do not fit the row.',
  source: 'common practice, no source; the plate and manual of the press govern',
  example: '=TONROW.ROWSETUP({"Mark","Section","Grade","Length"},{"C1","FB 3/8x4","A36",6},ShopStamp)',
  compute({ headings, row, shop }, { unit }, working) {
    const { names, cells } = oneRow(headings, row);
    const checked = checkedPart(cells, readHeadings(names), shop);
    const steps = operatorSteps(checked, shop);
    const shown =
      steps.is === 'steps'
        ? steps.steps.map((step) => stepCells(step, unit))
        : [noSteps(reasonOf(steps, checked, unit))];
    if (steps.is === 'steps' && steps.mind !== undefined)
      shown.unshift(noSteps(reasonOf(steps, checked, unit)));
    reportSteps(shown, working);
    return [titles, ...shown];
  },
});

/** Why there are no steps; of a row near its limit, what to mind before them. */
function reasonOf(steps: OperatorSteps, { result }: CheckedPart, unit: LengthUnit): string {
  if (steps.is === 'places not given') return placesNotGiven(steps);
  if (steps.is === 'refused') return `No steps: ${sentenceInCell(steps.failure)}`;
  return result.blank
    ? otherRowNote(result, unit) || 'The row is no part.'
    : `${result.verdict}: ${noteOf(result, unit)}`;
}

function noSteps(note: string): CellValue[] {
  return ['Mind', ...titles.slice(2).map(() => ''), note];
}

function stepCells(step: OperatorStep, unit: LengthUnit): CellValue[] {
  const length = (mm: number | undefined) => (mm === undefined ? '' : inShopUnit(mm, 'length', unit));
  const punch = [step.holder, step.punch].filter((text) => text !== undefined).join(' · ');
  return [
    stepTitle(step),
    step.station ?? '',
    step.mode ?? '',
    punch,
    step.die ?? '',
    length(step.stopMm),
    length(step.fenceMm),
    wayWords(step),
    length(step.upperMm),
    length(step.lowerMm),
    step.hits ?? '',
    stepNotes(step, unit),
  ];
}

function reportSteps(rows: readonly CellValue[][], working?: Working): void {
  for (const [title = '', ...cells] of rows) {
    const values = cells.flatMap((cell, at) =>
      cell === '' || cell === null
        ? []
        : [
            {
              symbol: titles[at + 1] ?? '',
              meaning: titles[at + 1] ?? '',
              kind: 'text' as const,
              value: String(cell),
            },
          ],
    );
    working?.step({
      title: String(title),
      formula: 'what an operator does',
      values,
      result: { symbol: 'step', meaning: 'the step', kind: 'text', value: String(title) },
      source: 'common practice, no source',
    });
  }
}
