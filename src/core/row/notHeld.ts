import { atMost } from '../atMost.js';
import type { NotHeld, RowFinding } from '../check/rowFact.js';
import { galvanizedFromMm } from '../rule/jobSpecRuling.js';
import { widestBoltHoleMm } from '../rule/widestBoltHole.js';
import { leastDimensionMm } from '../tooling/hole.js';
import { lineCount } from './layout/across.js';
import { needsPress } from './job/needsPress.js';
import type { ReadyRow } from './job/readyRow.js';
import type { RowJob } from './job/rowJob.js';
import { workInTexts } from './textsOfWork.js';

/**
 * What a row asks for and nothing is checked against, so that it is never OK: bends across each other, a bent plate without a bend,
 * an odd number of holes in two lines, a bolt that is loose in its hole, thick steel that is galvanized after it was punched or bent, and columns that
 * are not read, or texts that name work.
 */
export function notHeld(row: ReadyRow): RowFinding[] {
  const found: NotHeld[] = [
    ...bendsNotHeld(row),
    ...unevenLines(row),
    ...looseBolts(row),
    ...thickGalvanized(row),
  ];
  return [...found.map(asFinding), ...unreadWork(row)];
}

function asFinding(fact: NotHeld): RowFinding {
  return { rule: 'not held', outcome: 'open', verdict: 'OK so far', ...fact };
}

/** Columns that are filled in and hold or name work, and texts that name work: they are not read. */
export function unreadWork(job: RowJob): RowFinding[] {
  const columns: NotHeld[] = job.unread ? [{ why: 'unread columns', headings: job.unread }] : [];
  return [...columns, ...workInTexts(job)].map(asFinding);
}

function bendsNotHeld({ bends, bendMissing }: ReadyRow): NotHeld[] {
  if (bendMissing) return [{ why: 'bend missing' }];
  const runs = new Set(bends?.at?.map(({ at }) => at));
  return runs.size > 1 ? [{ why: 'bends across each other' }] : [];
}

function unevenLines({ places }: ReadyRow): NotHeld[] {
  return places.flatMap(({ group, index, faces }): NotHeld[] => {
    const perEnd = group.eachEnd ? group.count / 2 : group.count;
    const inTwo = faces.some(({ face }) => lineCount(group, face) === 2);
    return inTwo && perEnd % 2 === 1 && !group.holesAt ? [{ why: 'uneven lines', group: index }] : [];
  });
}

function looseBolts({ groups }: ReadyRow): NotHeld[] {
  return groups.flatMap(({ bolt, hole, number: group }): NotHeld[] => {
    const holeMm = leastDimensionMm(hole);
    if (!bolt || atMost(holeMm, widestBoltHoleMm(bolt.diameterMm))) return [];
    return [{ why: 'loose bolt', group, holeMm, bolt: bolt.name }];
  });
}

function thickGalvanized(row: ReadyRow): NotHeld[] {
  const { galvanized, section, places, bends } = row;
  if (!galvanized || !needsPress(row)) return [];
  const punched = places.flatMap(({ faces }) =>
    faces.filter(({ process }) => process.made !== 'drill').map(({ thicknessMm }) => thicknessMm),
  );
  const bent = bends && section.kind === 'flat' ? [section.thicknessMm] : [];
  const isThick = atMost(galvanizedFromMm, Math.max(0, ...punched, ...bent));
  return isThick ? [{ why: 'galvanized and thick' }] : [];
}
