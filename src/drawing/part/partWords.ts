import type { LengthUnit } from '../../core/quantity/units.js';
import { describeHole } from '../../core/tooling/hole.js';
import { lyingWords } from './fence.js';
import type { PartPlan } from './partPlan.js';
import { type View, xOf } from './partView.js';
import { choiceWords } from './readWork.js';
import { counted } from './work.js';

/** The part in one sentence: what it is, what decides, what is read, what is not drawn. */
export function summaryOf(
  plan: PartPlan,
  view: View,
  { unit, length: typed }: { unit: LengthUnit; length: string },
): string {
  const { section, lengthMm, groups, elsewhere, works, deciding } = plan;
  const length = lengthMm === undefined ? '' : `, ${typed} long,`;
  const holes = groups.map(({ group, made }) => {
    const how = made === '' ? '' : `, ${made}`;
    return `${group.count} × ${describeHole(group.hole, unit)}${how}`;
  });
  const others = works.flatMap(({ words }) => words);
  const none = elsewhere > 0 ? 'holes not drawn' : others.length > 0 ? 'no holes' : 'no holes or other work';
  const what = [...(holes.length > 0 ? holes : [none]), ...others];
  const sentence = [
    `${section.designation}${length} with ${what.join(', ')}`,
    ...(deciding ? [deciding.words] : []),
    ...notesOf(plan, view),
  ];
  return `${sentence.join('; ')}.`;
}

function notesOf(plan: PartPlan, view: View): string[] {
  const { lengthMm, drawnMm, face, fence, groups, elsewhere, works, choices, problem } = plan;
  const widths = Math.round(drawnMm / face.widthMm);
  return [
    ...(lengthMm === undefined ? [`the row gives no length, drawn ${widths} widths long`] : []),
    ...lyingWords(fence),
    ...breakNotes(plan, view),
    ...new Set(groups.flatMap(({ read }) => read)),
    ...choiceWords(choices),
    ...(problem ? ['the cuts do not leave one piece, so they are not drawn'] : []),
    ...works.flatMap(({ said }) => said),
    ...(elsewhere > 0 ? ['holes in another leg or flange are not drawn'] : []),
  ];
}

function breakNotes({ groups, works }: PartPlan, view: View): string[] {
  if (!view.broken) return [];
  const out = (places: readonly { x: number }[]) =>
    places.filter(({ x }) => xOf(view, x) === undefined).length;
  const leftOut = [
    [out(groups.flatMap(({ holes }) => holes.map(({ center }) => center))), ['hole', 'holes']] as const,
    ...works.map(({ marks, name }) => [out(marks), name] as const),
  ].filter(([count]) => count > 0);
  const total = leftOut.reduce((sum, [count]) => sum + count, 0);
  const all = leftOut.map(([count, name]) => counted(count, name)).join(', ');
  return [
    'the middle is left out, the ends are to scale',
    ...(leftOut.length > 0 ? [`${all} ${total === 1 ? 'lies' : 'lie'} in what is left out`] : []),
  ];
}
