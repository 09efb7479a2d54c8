import type { Finding } from '../check/finding.js';
import type { Verdict } from '../check/verdict.js';
import type { FaceId } from '../part/part.js';
import { type CellValue, meant, plainText } from '../quantity/cellValue.js';
import { lengthAsTyped } from '../row/lengthAsTyped.js';
import type { LengthUnit } from '../quantity/units.js';
import type { CheckedPart } from '../row/checkRow.js';
import type { RowField } from '../row/headings/heading.js';
import { rowCells } from '../row/headings/joinedColumns.js';
import type { Headings } from '../row/headings/readHeadings.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import type { RouteStep } from '../row/route.js';
import type { CheckedRow } from '../row/rowResult.js';
import type { OperatorStep } from '../work/operatorStep.js';
import type { OperatorSteps } from '../work/operatorSteps.js';
import type { Failure } from '../inputError.js';
import { type CardCaution, cautionsOf } from './cautionsOf.js';

/** What the head of a card says of a row, as it stands in the list. */
const headFields = ['mark', 'drawing', 'revision', 'qty', 'section', 'grade', 'length'] as const;

export type CardHead = Record<(typeof headFields)[number], string>;

/** What stands below the drawing of a card. */
export type CardBody =
  | { is: 'steps'; steps: readonly OperatorStep[] }
  /** The row cannot be made as it stands. */
  | { is: 'reasons' }
  /** A place is read, not given: it is not printed as a dimension. */
  | Extract<OperatorSteps, { is: 'places not given' }>
  /** A cell of the shop that the steps need cannot be read. */
  | { is: 'refused'; failure: Failure };

/** What is on the card of one mark; data only, without job and date, which the caller knows. */
export interface Card {
  head: CardHead;
  result: CheckedRow;
  verdict: Verdict;
  press?: string;
  /** Full bars to pull. */
  bars?: { count: number; lengthMm: number };
  /** Where the part goes after this press. */
  next?: RouteStep;
  body: CardBody;
  /** What the row comes near to, or what is open: it stands above the steps. */
  near: readonly Finding[];
  cautions: readonly CardCaution[];
  /** The part to draw, with its faces that are worked; undefined where the row could not be read. */
  part?: NonNullable<CheckedPart['part']> & { faces: readonly FaceId[] };
}

/**
 * What is on the card of a row: its head as typed, the steps or why there are none, and their cautions.
 * @param cells the row's cells, in the order of the headings
 * @param headings where each input stands
 * @param checked the row and its part, as `checkedPart` gives them
 * @param steps what an operator does, as `operatorSteps` gives it
 * @param unit the unit of the shop, which a bare length has
 * @returns the card as data; undefined for a blank row
 * Valid for every row. Throws nothing.
 * Source: common practice, no source.
 */
export function cardOf(
  cells: readonly CellValue[],
  headings: Headings,
  { result, part }: CheckedPart,
  steps: OperatorSteps,
  unit: LengthUnit,
): Card | undefined {
  if (result.blank) return undefined;
  const done = steps.is === 'steps' ? steps.steps : [];
  const { verdict, press, findings } = result;
  const bars = done.flatMap(({ notes }) => notes).find((note) => note.is === 'bars');
  const after = done.filter(({ action }) => action !== 'elsewhere first');
  const next = after.flatMap(({ notes }) => notes).find((note) => note.is === 'next');
  return {
    head: headOf(cells, headings, part?.row, unit),
    result,
    verdict,
    ...(press === undefined ? {} : { press }),
    ...(bars ? { bars: { count: bars.count, lengthMm: bars.lengthMm } } : {}),
    ...(next ? { next: next.route } : {}),
    body: bodyOf(steps),
    near:
      steps.is === 'steps' && toMind.has(verdict) ? findings.filter((each) => each.verdict === verdict) : [],
    cautions: cautionsOf(done),
    ...(part ? { part: { ...part, faces: facesOfPart(part) } } : {}),
  };
}

const toMind = new Set<Verdict>(['Near limit', 'OK so far']);

function bodyOf(steps: OperatorSteps): CardBody {
  if (steps.is === 'steps') return { is: 'steps', steps: steps.steps };
  return steps.is === 'places not given' || steps.is === 'refused' ? steps : { is: 'reasons' };
}

/** Cells as they stand in the list; a length with its unit, from the section where it has no cell. */
function headOf(
  cells: readonly CellValue[],
  headings: Headings,
  row: ReadyRow | undefined,
  unit: LengthUnit,
): CardHead {
  const joined = rowCells(cells, headings);
  const typed = (field: RowField) => {
    const cell = meant(joined[headings.fields[field]?.at ?? -1]);
    return cell === null ? '' : plainText(String(cell));
  };
  const head = Object.fromEntries(headFields.map((field) => [field, typed(field)])) as CardHead;
  return {
    ...head,
    section: row?.section.designation ?? head.section,
    qty: head.qty || '1',
    length: lengthAsTyped(cells, headings, row?.lengthMm, unit),
  };
}

/** The faces with holes, in the order of the section; the first where no face has any. */
function facesOfPart({ layouts }: NonNullable<CheckedPart['part']>): FaceId[] {
  const [layout] = layouts.layouts;
  if (!layout) return [];
  const worked = layout.faces.filter(({ id }) =>
    layout.groups.some(({ holes }) => holes.some(({ face }) => face === id)),
  );
  return (worked.length > 0 ? worked : layout.faces.slice(0, 1)).map(({ id }) => id);
}
