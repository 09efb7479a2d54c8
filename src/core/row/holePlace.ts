import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { flangeThicknessMm } from '../section/flangeThickness.js';
import type { AngleSection, AnySection, ChannelSection } from '../section/section.js';
import { usualGageMm } from './layout/across.js';
import { facesOfLeg } from './layout/facesOfLeg.js';
import type { HoleGroup } from './rowJob.js';

/** The element of the section a hole group is in, and where across it the holes lie. */
export interface HolePlace {
  element: 'plate' | 'leg' | 'web' | 'flange';
  thicknessMm: number;
  /** Across the element: width of the plate, leg, depth of the web, flange. */
  widthMm: number;
  /** From the heel of an angle or the back of a channel to the hole line; undefined where not given. */
  gageMm?: number;
  /** From the hole line to the nearer long edge or toe; undefined where not given. */
  edgeMm?: number;
  /** What was assumed, for the note. */
  assumed: string[];
}

/** Where a hole group lies in its section; a sentence where the row contradicts the section. */
export function holePlace(section: AnySection, group: HoleGroup, unit: LengthUnit): HolePlace | string {
  const problem = legProblem(section, group.leg, unit);
  if (problem !== undefined) return problem;
  switch (section.kind) {
    case 'flat':
      return {
        element: 'plate',
        thicknessMm: section.thicknessMm,
        widthMm: section.widthMm,
        ...given(group.edgeMm, group.gageMm),
        assumed: [],
      };
    case 'angle':
      return anglePlace(section, group, unit);
    case 'channel':
      return channelPlace(section, group);
    default:
      return `${group.title}: holes in ${section.designation} are drilled; no press station punches them.`;
  }
}

function given(edgeMm: number | undefined, gageMm: number | undefined) {
  return { ...(edgeMm === undefined ? {} : { edgeMm }), ...(gageMm === undefined ? {} : { gageMm }) };
}

/** In a leg or flange the gage and the edge distance add up to its width, so one gives the other. */
function fromHeel(widthMm: number, group: HoleGroup) {
  const gageMm = group.gageMm ?? (group.edgeMm === undefined ? undefined : widthMm - group.edgeMm);
  const edgeMm = group.edgeMm ?? (group.gageMm === undefined ? undefined : widthMm - group.gageMm);
  return given(edgeMm, gageMm);
}

function anglePlace(section: AngleSection, group: HoleGroup, unit: LengthUnit): HolePlace {
  const { legAMm, legBMm, thicknessMm } = section;
  const equal = legAMm === legBMm;
  const place = (widthMm: number, ...assumed: string[]): HolePlace => {
    const { gageMm, said } = usualGage(widthMm, group, unit);
    const across = fromHeel(widthMm, gageMm === undefined ? group : { ...group, gageMm });
    return { element: 'leg', thicknessMm, widthMm, ...across, assumed: [...assumed, ...said] };
  };
  if (group.leg === undefined) {
    return equal
      ? place(legAMm)
      : place(legAMm, `holes taken in the longer leg, ${formatLength(legAMm, unit)} ${unit}`);
  }
  return place(legOf(section, group.leg, unit) ?? legAMm);
}

/** The width of the leg that is meant by `long`, `short` or its size. */
export function legOf(section: AngleSection, leg: string, unit: LengthUnit): number | undefined {
  return facesOfLeg(section, leg, unit)[0]?.widthMm;
}

/** What is wrong with the leg a row names: a sentence where the section has no such leg. */
export function legProblem(
  section: AnySection,
  leg: string | undefined,
  unit: LengthUnit,
): string | undefined {
  if (leg === undefined) return undefined;
  if (section.kind === 'channel' && !['web', 'flange'].includes(leg.toLowerCase()))
    return `Leg: '${leg}' is not part of a channel. Write web or flange.`;
  if (section.kind === 'angle' && legOf(section, leg, unit) === undefined)
    return `Leg: '${leg}' is not a leg of ${section.designation}. Write long, short or the leg's size.`;
  return undefined;
}

/** Without a gage and an edge distance, holes in a leg lie on its usual gage, where there is one. */
function usualGage(legMm: number, group: HoleGroup, unit: LengthUnit): { gageMm?: number; said: string[] } {
  if (group.gageMm !== undefined || group.edgeMm !== undefined) return { said: [] };
  const gageMm = usualGageMm(legMm);
  if (gageMm === undefined) return { said: [] };
  return { gageMm, said: [`usual gage ${formatLength(gageMm, unit)} ${unit} taken`] };
}

function channelPlace(section: ChannelSection, group: HoleGroup): HolePlace {
  const word = group.leg?.toLowerCase() ?? 'web';
  if (word === 'web') {
    return {
      element: 'web',
      thicknessMm: section.webThicknessMm,
      widthMm: section.depthMm,
      ...given(group.edgeMm, group.gageMm),
      assumed: group.leg === undefined ? ['holes taken in the web'] : [],
    };
  }
  const across = fromHeel(section.flangeWidthMm, group);
  const thicknessMm = flangeThicknessMm({ section, gageMm: across.gageMm ?? section.webThicknessMm });
  return { element: 'flange', thicknessMm, widthMm: section.flangeWidthMm, ...across, assumed: [] };
}
