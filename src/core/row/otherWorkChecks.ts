import { shearStrengthMPa } from '../material/shearStrength.js';
import { upperTensileMPa } from '../material/upperTensile.js';
import { bendFindings } from '../press/bendStation.js';
import { bendVee } from '../press/bendVee.js';
import { cornerClipFindings } from '../press/cornerClipStation.js';
import type { Finding } from '../check/finding.js';
import { notchFindings } from '../press/notchStation.js';
import type { Press } from '../press/press.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { bentLegs } from './bentLegs.js';
import { bendsAlongRolling } from './bendsAlongRolling.js';
import { check, type Check } from './check.js';
import { bendDistances } from './layout/bendDistances.js';
import { distanceSteps } from './layout/distanceSteps.js';
import { inAnyPlace } from './inAnyPlace.js';
import { jointFindings } from './layout/jointFindings.js';
import type { Layout, Layouts } from './layout/layoutOf.js';
import { isNotchedOnPress } from './job/needsPress.js';
import type { ReadyRow } from './job/readyRow.js';
import type { Notches } from './job/rowJob.js';
import { isWorkKnown } from './unclear.js';

type Work = 'notch' | 'corner clip' | 'bend';

/** The notches, corner clips and bends of a row against one press. */
export function otherWorkChecks(
  press: Press,
  row: ReadyRow,
  layouts: Layouts,
  shop: Shop,
  asked: boolean,
): Check[] {
  const { bends } = row;
  const { notches, clips }: Partial<ReadyRow> = isNotchedOnPress(row) ? row : {};
  const sheetChecks: [Work, boolean, (thicknessMm: number, working?: Working) => Finding[]][] = [
    [
      'notch',
      notches !== undefined,
      (thicknessMm, working) => notchesOn(press, row, layouts, shop, thicknessMm, working),
    ],
    [
      'corner clip',
      clips !== undefined,
      (thicknessMm, working) => clipsOn(press, row, shop, thicknessMm, working),
    ],
    [
      'bend',
      bends !== undefined,
      (thicknessMm, working) => bendsOn(press, row, layouts, shop, thicknessMm, working),
    ],
  ];
  return sheetChecks
    .filter(([work, wanted]) => wanted && isWorkKnown(row, work))
    .map(([work, , run]) => {
      const thicknessMm = thicknessOf(row, work);
      return check(asked, work, (working) =>
        thicknessMm === undefined ? [notHere(row, work)] : run(thicknessMm, working),
      );
    });
}

/** Flats and angle legs are notched and clipped, flats are bent; other sections have no such station. */
function thicknessOf({ section }: ReadyRow, work: Work): number | undefined {
  if (section.kind === 'flat') return section.thicknessMm;
  return section.kind === 'angle' && work !== 'bend' ? section.thicknessMm : undefined;
}

function notHere({ section }: ReadyRow, work: Work): Finding {
  const { designation } = section;
  return { rule: 'station for work', outcome: 'failed', verdict: 'No station', work, designation };
}

function strengthOf(row: ReadyRow, shop: Shop, thicknessMm: number, working?: Working): number {
  const shearRatio = setting(shop, 'shearRatio');
  return shearStrengthMPa({ grade: row.grade, thicknessMm, shearRatio }, working);
}

/** At a corner a notch is cut on two sides, and by a tool that may be wider. Of one that is not placed either may be. */
function notchesOn(
  press: Press,
  row: ReadyRow,
  layouts: Layouts,
  shop: Shop,
  thicknessMm: number,
  working?: Working,
): Finding[] {
  if (!row.notches) return [];
  const strength = strengthOf(row, shop, thicknessMm, working);
  const job = { ...row.notches, thicknessMm, shearStrengthMPa: strength };
  const [layout] = layouts.layouts;
  if (layout && isInCorners(layout, row.notches))
    return notchFindings(press, { ...job, where: 'corner' }, working);
  const inEdge = notchFindings(press, { ...job, where: 'edge' }, working);
  if (row.notches.at || !inEdge.some(({ outcome }) => outcome === 'failed')) return inEdge;
  return inAnyPlace([inEdge, notchFindings(press, { ...job, where: 'corner' })], { cell: 'Notch at' });
}

/** Every notch is cut on two sides. */
function isInCorners({ faces }: Layout, { at = [] }: Notches): boolean {
  const sides = new Map<string, number>();
  for (const { id, outline } of faces) {
    for (const { cause } of outline.edges) {
      const notch = `${id} ${cause.number}`;
      if (cause.is === 'notch') sides.set(notch, (sides.get(notch) ?? 0) + 1);
    }
  }
  return at.length > 0 && sides.size === at.length && [...sides.values()].every((each) => each === 2);
}

function clipsOn(press: Press, row: ReadyRow, shop: Shop, thicknessMm: number, working?: Working): Finding[] {
  if (!row.clips) return [];
  const strength = strengthOf(row, shop, thicknessMm, working);
  return cornerClipFindings(press, { ...row.clips, thicknessMm, shearStrengthMPa: strength }, working);
}

function bendsOn(
  press: Press,
  row: ReadyRow,
  layouts: Layouts,
  shop: Shop,
  thicknessMm: number,
  working?: Working,
): Finding[] {
  if (!row.bends) return [];
  const { grade, galvanized } = row;
  const alongRolling = bendsAlongRolling(row);
  const job = {
    lengthMm: row.bends.lengthMm,
    thicknessMm,
    grade,
    tensileMPa: upperTensileMPa({ grade, thicknessMm }, working),
    veeRatio: setting(shop, 'veeRatio'),
    ...(galvanized ? { galvanized } : {}),
    ...(alongRolling === undefined ? {} : { alongRolling }),
  };
  const station = bendFindings(press, job, working);
  if (station.some(({ verdict }) => verdict === 'No station')) return station;
  const [layout] = layouts.layouts;
  const legs = layout ? bentLegs(press, layout, working) : [];
  const { veeMm } = bendVee(press, job);
  if (veeMm === undefined) return [...station, ...legs];
  const distances = jointFindings(layouts, (layout) => bendDistances(layout, veeMm));
  distanceSteps(distances, working);
  return [...station, ...legs, ...distances];
}
