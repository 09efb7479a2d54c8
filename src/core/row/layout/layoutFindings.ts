import { edgeClearances } from '../../part/edgeClearances.js';
import { holePairs } from '../../part/holePairs.js';
import { mostPoints } from '../../part/mostPoints.js';
import type { PlacedHole } from '../../part/part.js';
import type { Finding } from '../../press/finding.js';
import { roundingShare } from '../../press/limit.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { ReadyRow } from '../checkOnPress.js';
import { edgeNeeds, heldGroup, type HeldGroup, type Need, practice, spacingNeeds } from './holeNeeds.js';
import type { LaidGroup } from './layGroup.js';
import { type Layout, type Layouts, layoutsOf } from './layoutOf.js';
import { causeWords, needWords, problemWords, sizeWords } from './layoutWords.js';

const toleranceMm = 1e-6;
/** Drawings are not dimensioned finer. */
const sameSpotMm = 0.5;

interface Held {
  groups: Map<number, HeldGroup>;
  code: EdgeCode;
  shop: Shop;
}

/**
 * What the part as a whole rules out: the row is laid out as geometry, and every clearance of its holes to every edge, cut
 * and other hole is held against what the code and press practice ask. Where the row leaves a choice, such as the leg or
 * the corners that are clipped, only what fails whichever is chosen is found. Source: geometry; each rule names its own.
 */
export function layoutFindings(row: ReadyRow, shop: Shop): Finding[] {
  const impossible = cutsThatCannotBe(row, shop);
  if (impossible.length > 0) return impossible;
  if (row.places.length === 0 && row.clips === undefined && row.miterRad === 0 && !row.notches?.at) return [];
  const code = setting(shop, 'edgeCode');
  const layouts = layoutsOf(row, shop.unit, setting(shop, 'holesWithoutPitch') === 'even');
  if (!layouts) return [];
  const groups = new Map(
    row.places.map((placed) => [
      row.groups.indexOf(placed.group),
      heldGroup(placed, { unit: shop.unit, code }),
    ]),
  );
  return failingInAll(layouts, { groups, code, shop });
}

/**
 * The findings of the first layout, where every layout has some. Where only some have, it is not known whether the part
 * can be made as it is meant: the row must say which.
 */
function failingInAll({ layouts, cells }: Layouts, held: Held): Finding[] {
  const failing = layouts.map((layout) => findingsOf(layout, held)).filter((found) => found.length > 0);
  const [first = []] = failing;
  if (failing.length === layouts.length) return first;
  return first.map((finding) => ({
    ...finding,
    verdict: 'Not checked',
    note: `${finding.note.replace(/\.$/, '')}, depending on ${cells.join(' and ')}: fill ${cells.length === 1 ? 'it' : 'them'} in.`,
  }));
}

function findingsOf(layout: Layout, held: Held): Finding[] {
  if (layout.problem) {
    const note = problemWords(layout.problem, held.shop.unit);
    return [{ verdict: 'Check input', governs: 'outline', note }];
  }
  const groups = layout.groups.filter(({ index }) => held.groups.has(index));
  return [
    ...edgeFindings(layout, groups, held),
    ...pairFindings(groups, held),
    ...groups.flatMap((group) => roomFindings(layout, group, held)),
  ];
}

/** The worst distance of each group to an edge, by how much of it is missing. */
function edgeFindings(
  layout: Layout,
  groups: readonly LaidGroup[],
  { groups: held, code, shop }: Held,
): Finding[] {
  const worst = new Map<number, { missingMm: number; note: string }>();
  const holes = groups.flatMap((group) => group.holes);
  for (const face of layout.faces) {
    edgeClearances(face, holes, (hole, edge, clearances) => {
      const group = held.get(hole.group);
      if (!group) return;
      const failing = edgeNeeds(group, hole, edge, clearances, code).find(isUnder);
      const overMm = -clearances.rim.most;
      if (!failing && overMm <= toleranceMm) return;
      const missingMm = Math.max(overMm, failing ? failing.leastMm - failing.distance.most : 0);
      if (missingMm <= (worst.get(hole.group)?.missingMm ?? 0)) return;
      const where = causeWords(edge.cause);
      const note =
        overMm > toleranceMm
          ? `the hole runs ${sizeWords(overMm, shop.unit)} over ${where}.`
          : failing
            ? needWords(failing, where, shop.unit)
            : '';
      worst.set(hole.group, { missingMm, note });
    });
  }
  return [...worst].map(([group, { note }]) => ({
    verdict: 'Edge short',
    governs: 'edge distance',
    holeGroup: titleOf(held, group),
    note: `${titleOf(held, group)}: ${note}`,
  }));
}

/** The worst distance between the holes of two groups, or of one. */
function pairFindings(groups: readonly LaidGroup[], { groups: held, code, shop }: Held): Finding[] {
  const worst = new Map<string, { missingMm: number; finding: Finding }>();
  const holes = groups.flatMap((group) => group.holes);
  const diameters = [...held.values()].map(({ bolt, group }) =>
    Math.max(bolt?.diameterMm ?? 0, leastDimensionMm(group.hole)),
  );
  // No code asks for more than three diameters from center to center.
  const reachMm = Math.max(0, ...[...held.values()].map(({ webMm }) => webMm), 3 * Math.max(0, ...diameters));
  holePairs(holes, reachMm, (a, b, rim) => {
    const [first, second] = [held.get(a.group), held.get(b.group)];
    if (!first || !second) return;
    const failing = spacingNeeds([first, second], [a, b], rim, code).find(isUnder);
    const overMm = -rim.most;
    if (!failing && overMm <= toleranceMm) return;
    const missingMm = Math.max(overMm, failing ? failing.leastMm - failing.distance.most : 0);
    const key = `${a.group} ${b.group}`;
    if (missingMm <= (worst.get(key)?.missingMm ?? 0)) return;
    const other = a.group === b.group ? 'the next hole' : `a hole of ${second.group.title}`;
    const words =
      overMm > toleranceMm
        ? `a hole runs ${sizeWords(overMm, shop.unit)} into ${other}.`
        : failing
          ? needWords(failing, other, shop.unit)
          : '';
    const finding: Finding = mayBeAtOtherEnd([first, second], [a, b])
      ? {
          verdict: 'Not checked',
          governs: 'spacing',
          note: `${second.group.title} lies on ${first.group.title} where both ends are taken from the left end, so the spacing was not checked. Write End as ${otherEnd} for holes at the right end.`,
        }
      : { verdict: 'Holes too close', governs: 'spacing', note: `${first.group.title}: ${words}` };
    worst.set(key, { missingMm, finding: { ...finding, holeGroup: first.group.title } });
  });
  return [...worst.values()].map(({ finding }) => finding);
}

const otherEnd = "'right 1-1/2'";

/** Like holes at both ends, each given from its own end, are an everyday brace: they lie on each other only from one. */
function mayBeAtOtherEnd(
  groups: readonly [HeldGroup, HeldGroup],
  [a, b]: readonly [PlacedHole, PlacedHole],
): boolean {
  if (a.group === b.group) return false;
  const same = Math.hypot(a.center.x - b.center.x, a.center.y - b.center.y) < sameSpotMm;
  return same && groups.every(({ group }) => group.endFrom === undefined && group.endMm !== undefined);
}

/** Holes whose spaces the row does not give must have room on the part however they are spaced. */
function roomFindings({ faces }: Layout, laid: LaidGroup, { groups }: Held): Finding[] {
  const held = groups.get(laid.index);
  const face = faces.find(({ id }) => id === laid.holes[0]?.face);
  if (!held || !face || laid.rigid || laid.holes.length < 2) return [];
  const holeMm = leastDimensionMm(held.group.hole);
  const [first] = laid.holes;
  const ends = face.outline.edges.flatMap(({ from }) => from.x);
  const lengthMm = Math.max(...ends) - Math.min(...ends) - holeMm;
  const oneLine = laid.holes.every(
    ({ center, free }) => center.y === first?.center.y && (!free || free.y0 === free.y1),
  );
  const room = mostPoints(lengthMm, oneLine ? 0 : face.widthMm - holeMm, holeMm + held.webMm);
  if (laid.holes.length <= room) return [];
  const note = `${held.group.title}: ${laid.holes.length} holes have no room on the part, at most ${room} (${practice}). Correct Holes, Hole or Length.`;
  return [{ verdict: 'Holes too close', governs: 'spacing', holeGroup: held.group.title, note }];
}

/** Work that is larger than the part, whatever its place. */
function cutsThatCannotBe({ section, lengthMm, notches, clips, bends }: ReadyRow, { unit }: Shop): Finding[] {
  const size = (mm: number) => sizeWords(mm, unit);
  const found: Finding[] = [];
  const refuse = (governs: string, note: string) => found.push({ verdict: 'Check input', governs, note });
  const widthMm = widestMm(section);
  if (widthMm === undefined) return found;
  if (notches && !notches.at && notches.depthMm >= widthMm) {
    refuse(
      'notch',
      `Notch depth ${size(notches.depthMm)}: the part is ${size(widthMm)} wide. Correct Notch depth.`,
    );
  }
  if (notches && !notches.at && lengthMm !== undefined && notches.widthMm >= lengthMm) {
    refuse(
      'notch',
      `Notch width ${size(notches.widthMm)}: the part is ${size(lengthMm)} long. Correct Notch width.`,
    );
  }
  if (clips && clips.count > 4) {
    refuse(
      'corner clip',
      `Corners ${clips.count}: ${section.designation} has 4 corners to clip. Correct Corners.`,
    );
  }
  const longestMm = lengthMm === undefined ? undefined : Math.max(lengthMm, widthMm);
  if (bends && longestMm !== undefined && bends.lengthMm > longestMm * (1 + roundingShare)) {
    refuse(
      'bend',
      `Bend length ${size(bends.lengthMm)}: the part is ${size(lengthMm ?? 0)} by ${size(widthMm)}. Correct Bend length.`,
    );
  }
  return found;
}

function widestMm(section: ReadyRow['section']): number | undefined {
  if (section.kind === 'flat') return section.widthMm;
  return section.kind === 'angle' ? Math.max(section.legAMm, section.legBMm) : undefined;
}

function isUnder({ distance, leastMm }: Need): boolean {
  return distance.most < leastMm * (1 - roundingShare) - toleranceMm;
}

function titleOf(held: Held['groups'], group: number): string {
  return held.get(group)?.group.title ?? '';
}
