import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { describeHole } from '../../core/tooling/hole.js';
import type { FactTable } from '../drawing.js';
import type { DrawnGroup } from './drawnGroup.js';
import { lyingWords } from './fence.js';
import type { PartPlan } from './partPlan.js';

/** What a column of hole distances says of other work. */
const doesNotApply = '–';

/** The part as a table: the piece itself, its holes, its other work. Hole distances have columns where there are holes. */
export function factsOf(plan: PartPlan, unit: LengthUnit): FactTable {
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
        pieceText(plan, unit),
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

function pieceText({ section, lengthMm }: PartPlan, unit: LengthUnit): string {
  if (lengthMm === undefined) return section.designation;
  return `${section.designation}, ${formatLength(lengthMm, unit)} ${unit} long`;
}

function holeCells({ group, made, read, choices }: DrawnGroup, unit: LengthUnit): [string[], string] {
  const sizes = (...mm: (number | undefined)[]) => {
    const given = mm.flatMap((each) => (each === undefined ? [] : formatLength(each, unit)));
    return given.length === 0 ? 'not given' : given.join(', ');
  };
  const distances = [
    sizes(group.endMm),
    sizes(group.edgeMm),
    sizes(group.pitchMm, ...(group.pitchesMm ?? [])),
    sizes(group.gageMm),
  ];
  const drawnAs = [...read, ...choices].join('; ') || 'given';
  return [distances, made === '' ? drawnAs : `${drawnAs}; ${made}`];
}
