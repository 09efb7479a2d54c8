import type { FaceId, PlacedHole } from '../part/part.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { type FaceSize, facesOf } from '../row/job/faces.js';
import type { Layout, Layouts } from '../row/layout/layoutOf.js';
import type { RowWithSection } from '../row/job/readyRow.js';
import type { Shop } from '../shop/readShop.js';
import type { GaugeHole, GaugeReach, GaugeSetting } from './gaugeSetting.js';
import { gaugeSettings } from './gaugeSettings.js';
import { matingOf } from './matingHole.js';
import { openPlaces } from './openPlaces.js';
import { pressReach } from './pressReach.js';
import { edgeAtFence, endAtStop, type StopSide, type Turn, type Turns } from './way.js';

/** A hole of a row, its group from 0 and its number in it from 1, as the layout has them. */
export interface HoleOfRow {
  group: number;
  index: number;
}

/** A hole at a setting: how the part lies for it, and what of the part is at stop and fence. */
export interface RowGaugeHit extends HoleOfRow {
  turn: Turn;
  end: 'left' | 'right';
  edge: 'bottom' | 'top' | 'heel';
}

export interface RowGaugeSetting extends Omit<GaugeSetting, 'hits'> {
  hits: readonly RowGaugeHit[];
}

/** The settings for the holes in one face of a row. */
export interface RowGauge {
  face: FaceId;
  /** The side on which the left end of the part lies, as the operator sees it. */
  leftEnd: StopSide;
  settings: readonly RowGaugeSetting[];
  /** Out of reach of every setting: marked out by hand. */
  marked: readonly HoleOfRow[];
  /** The row does not give where they lie: nothing can be set for them. */
  notGiven: readonly HoleOfRow[];
  /** Items of the press that are not known, so that nothing was checked against them. */
  unknown: readonly PressItemKey[];
}

export interface RowToGauge {
  row: RowWithSection;
  layouts: Layouts;
  press: Press;
  shop: Shop;
  /** Only these groups: the holes of one punch. */
  groups?: readonly number[];
  /** The most that plates may be turned; half turns where not given. */
  turns?: Turns;
}

/**
 * The fewest settings of fence and stop for the holes of a row on a press, face by face.
 *
 * A plate lies as it is drawn, its left end at the stop on the left, its top edge at the fence in the throat; so does a
 * web. Legs and flanges lie with the heel or the back of the web at a fence before the punch. The leg that the row names
 * first lies as it is drawn; the heel keeps its place for the other, and so its left end is on the right. Only plates with
 * square ends are turned. Bolt holes are made one way round unless their clearance covers the tolerances. What is read, not
 * given, is no place for a gauge.
 *
 * @param input the row with its layouts, the press and the shop, and which groups of holes
 * @returns for each face with holes, in the order of the section, its settings in mm and the holes without one
 * Valid for rows that were laid out. Throws nothing.
 * @example rowGauge({ row, layouts, press, shop })[0].settings.length // 2 for a base plate with a hole in each corner
 * Source: as `gaugeSettings`; tolerance of the length AISC 303, 6.4.1 (from memory), else common practice, no source.
 */
export function rowGauge(input: RowToGauge): RowGauge[] {
  const [layout] = input.layouts.layouts;
  if (!layout || layout.problem || layout.endless) return [];
  const drawn = heelFaceDrawn(input.row, layout);
  const groups = layout.groups.filter(({ index }) => input.groups?.includes(index) ?? true);
  return facesOf(input.row.section).flatMap((face) => {
    const holes = groups.flatMap((group) => group.holes.filter((hole) => hole.face === face.id));
    return holes.length === 0
      ? []
      : [faceGauge(face, holes, layout.lengthMm, face.heel && face.id !== drawn ? 'right' : 'left', input)];
  });
}

/** The leg or flange that the row works first: it is taken to be drawn with its left end on the left. */
function heelFaceDrawn({ section }: RowWithSection, { groups }: Layout): FaceId | undefined {
  const heels = new Set(facesOf(section).flatMap(({ id, heel }) => (heel ? [id] : [])));
  return groups.flatMap(({ holes }) => holes.map(({ face }) => face)).find((face) => heels.has(face));
}

/** The stops of a press as they are to a part that lies with its left end on this side. */
function seenFrom(leftEnd: StopSide, { fence, leftStop, rightStop }: GaugeReach): GaugeReach {
  const [left, right] = leftEnd === 'left' ? [leftStop, rightStop] : [rightStop, leftStop];
  return { fence, ...(left ? { leftStop: left } : {}), ...(right ? { rightStop: right } : {}) };
}

function faceGauge(
  face: FaceSize,
  holes: readonly PlacedHole[],
  lengthMm: number,
  leftEnd: StopSide,
  { row, layouts, press, shop, turns = 'half' }: RowToGauge,
): RowGauge {
  const isOpen = openPlaces(layouts);
  const given = holes.filter((hole) => !isOpen(hole));
  const { reach, unknown } = pressReach(press, face.widthMm, face.heel);
  const mating = new Map(row.groups.map((group) => [group.number, matingOf(group, lengthMm, shop)]));
  const atGauges = given.map(({ center: { x, y }, group }): GaugeHole => {
    const bound = mating.get(group);
    const place = { x, y: face.heel ? y : face.widthMm - y };
    return bound ? { ...place, mating: bound } : place;
  });
  const turned = face.id === 'plate' && row.miterRad === 0 ? turns : 'none';
  const plate = { lengthMm, widthMm: face.widthMm };
  const seen = seenFrom(leftEnd, reach);
  const { settings, marked } = gaugeSettings({ ...plate, holes: atGauges, turns: turned, reach: seen });
  const ofRow = (hole: PlacedHole | undefined): HoleOfRow => ({
    group: hole?.group ?? 0,
    index: hole?.index ?? 0,
  });
  return {
    face: face.id,
    leftEnd,
    settings: settings.map((setting) => ({
      ...setting,
      stop: leftEnd === 'left' ? setting.stop : otherSide[setting.stop],
      hits: setting.hits.map(({ hole, turn }) => ({
        ...ofRow(given[hole]),
        turn,
        end: endAtStop({ turn, stop: setting.stop }),
        edge: edgeOf(face, turn, setting),
      })),
    })),
    marked: marked.map((hole) => ofRow(given[hole])),
    notGiven: holes.filter(isOpen).map(ofRow),
    unknown,
  };
}

const otherSide = { left: 'right', right: 'left' } as const;

function edgeOf({ heel }: FaceSize, turn: Turn, { stop }: GaugeSetting): RowGaugeHit['edge'] {
  if (heel) return 'heel';
  return edgeAtFence({ turn, stop }) === 'bottom' ? 'top' : 'bottom';
}
