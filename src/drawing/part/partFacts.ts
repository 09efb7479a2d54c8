import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { GroupField } from '../../core/row/headings/heading.js';
import { describeHole } from '../../core/tooling/hole.js';
import type { FactTable } from '../drawing.js';
import type { DrawnGroup } from './drawnGroup.js';
import { lyingWords } from './fence.js';
import type { PartPlan } from './partPlan.js';

/** What a column of hole distances says of other work. */
const doesNotApply = '–';

/** The part as a table: the piece itself, its holes, its other work. Hole distances have columns where there are holes. */
export function factsOf(plan: PartPlan, { unit, length }: { unit: LengthUnit; length: string }): FactTable {
  const { groups, works } = plan;
  const withHoles = groups.length > 0;
  const row = (work: string, size: string, count: string, distances: string[], drawnAs: string) => [
    work,
    size,
    count,
    ...(withHoles ? distances : []),
    drawnAs,
  ];
  const none = [doesNotApply, doesNotApply, doesNotApply, doesNotApply];
  const distanceHeadings = [`End, ${unit}`, `Edge, ${unit}`, `Pitch, ${unit}`, `Gage, ${unit}`];
  return {
    headings: row('Work', 'Size', 'Count', distanceHeadings, 'Drawn as'),
    rows: [
      row(
        'Piece',
        pieceText(plan, length),
        '1',
        none,
        [plan.lengthMm === undefined ? 'no length in the row' : 'given', ...lyingWords(plan.fence)].join(
          '; ',
        ),
      ),
      ...groups.map((group) =>
        row(
          group.group.title,
          describeHole(group.group.hole, unit),
          String(group.group.count),
          ...holeCells(group, unit),
        ),
      ),
      ...works.flatMap(({ facts }) =>
        facts.map(({ work, size, count, drawnAs }) => row(work, size, String(count), none, drawnAs)),
      ),
    ],
  };
}

function pieceText({ section, lengthMm }: PartPlan, length: string): string {
  return lengthMm === undefined ? section.designation : `${section.designation}, ${length} long`;
}

function holeCells({ group, made, read, choices }: DrawnGroup, unit: LengthUnit): [string[], string] {
  const { typed = {} } = group;
  const size = (field: GroupField, mm: number | undefined) =>
    typed[field] ?? (mm === undefined ? 'not given' : formatLength(mm, unit));
  const distances = [
    size('end', group.endMm),
    size('edge', group.edgeMm),
    size('pitch', group.pitchMm ?? group.pitchesMm?.[0]),
    size('gage', group.gageMm),
  ];
  const drawnAs = [...read, ...choices].join('; ') || 'given';
  return [distances, made === '' ? drawnAs : `${drawnAs}; ${made}`];
}
