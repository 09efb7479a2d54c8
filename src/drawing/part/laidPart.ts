import type { Finding } from '../../core/check/finding.js';
import type { OutlineProblem } from '../../core/part/outlineInput.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Choice } from '../../core/row/layout/alternatives.js';
import { type Layout, layoutsOf } from '../../core/row/layout/layoutOf.js';
import type { RowWithSection } from '../../core/row/job/readyRow.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { FlatSection, Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import { lyingWidthMm } from './partView.js';

/** A part laid out for its drawing: one of the ways that the row leaves to choose. */
export interface LaidPart {
  layout: Layout;
  choices: readonly Choice[];
  /** The cuts do not leave one piece, so the part is laid out without them. */
  problem?: OutlineProblem;
}

/** A part whose length the row does not give is drawn so many widths long; longer where its ends lean. */
const drawnWidths = 3;
const drawnWidthsMitered = 4;

/** The part of a row, laid out the way that the deciding finding is about where it is about one. */
export function laidPart(
  job: RowJob,
  section: Section,
  { unit, shop, deciding }: { unit: LengthUnit; shop?: Shop | undefined; deciding?: Finding | undefined },
): LaidPart {
  const even = shop?.settings.settings.holesWithoutPitch === 'even';
  const layOut = (row: RowWithSection): LaidPart => {
    const { layouts, choices } = layoutsOf(row, unit, even);
    const layout = layouts.find((each) => isOf(each, deciding)) ?? (layouts[0] as Layout);
    return { layout, choices };
  };
  const given: RowWithSection = { ...job, section: asFlat(section) };
  const row =
    job.lengthMm === undefined ? { ...given, lengthMm: drawnLengthMm(layOut(given), given) } : given;
  const laid = layOut(row);
  const { problem } = laid.layout;
  return problem ? { ...layOut(withoutCuts(row)), problem } : laid;
}

/** A solid bar is worked on its axis, and lies as a flat bar of its size. */
function asFlat(section: Section): Exclude<Section, { kind: 'round' | 'square' }> {
  if (section.kind !== 'round' && section.kind !== 'square') return section;
  const sizeMm = lyingWidthMm(section);
  const { designation } = section;
  return {
    kind: 'flat',
    designation,
    form: 'bar',
    thicknessMm: sizeMm,
    widthMm: sizeMm,
  } satisfies FlatSection;
}

function isOf({ groups }: Layout, deciding: Finding | undefined): boolean {
  if (deciding?.rule !== 'distance') return false;
  return groups.some(({ index, holes }) => index === deciding.group && holes[0]?.face === deciding.face);
}

/** Past the last hole that is placed from the left end. */
function drawnLengthMm({ layout }: LaidPart, { section, miterRad }: RowWithSection): number {
  const widthMm = layout.faces[0]?.widthMm ?? lyingWidthMm(section as Section);
  const placed = layout.groups
    .flatMap(({ holes }) => holes)
    .filter(({ free, center }) => !free && center.x < layout.lengthMm / 2);
  const lastMm = Math.max(0, ...placed.map(({ center }) => center.x));
  return Math.max(widthMm * (miterRad > 0 ? drawnWidthsMitered : drawnWidths), lastMm + widthMm);
}

function withoutCuts(row: RowWithSection): RowWithSection {
  const bare = { ...row, miterLeftRad: 0, miterRightRad: 0, miterRad: 0 };
  delete bare.clips;
  delete bare.notches;
  return bare;
}
