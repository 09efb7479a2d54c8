import { radianPerDegree } from '../../quantity/units.js';
import { whyShort } from '../../say/stockWords.js';
import { mitersInBar } from './cutBars.js';
import type { CutBar, ListPlan, PlannedJob } from './jobPlan.js';
import type { JobPart } from './stockJob.js';
import { boughtName, leftOutWords, statusWords, totalStatusWords, unplannedWords } from './planWords.js';

/** The plan of a list as plain data with the unit in each key, for programs: mm, degrees from square, kg. */
export function planJson(plan: ListPlan): Record<string, unknown> {
  const { planned, unplanned, left, losses, unit, currency, stamp, hidden, others, unreadable } = plan;
  return {
    shop: stamp,
    currency: currency === '' ? null : currency,
    endTrimMm: losses.trimMm ?? null,
    gripMm: losses.gripMm ?? null,
    shortestDropKeptMm: losses.keepMm ?? null,
    status: totalStatusWords(plan),
    sections: planned.map(sectionJson),
    notPlanned: [
      ...unplanned.map((each) => ({
        section: each.job.section.designation,
        grade: each.job.grade.name,
        marks: each.job.parts.map(({ mark }) => mark),
        why: unplannedWords(each, unit),
      })),
      ...left.map((each) => ({
        list: each.list,
        row: each.row,
        mark: each.mark,
        verdict: each.verdict,
        why: leftOutWords(each.why),
      })),
    ],
    hiddenRowsPlanned: hidden,
    notParts: others,
    unreadableStock: unreadable,
  };
}

function sectionJson(job: PlannedJob): Record<string, unknown> {
  const { mass, plan, cost } = job;
  return {
    section: boughtName(job.job),
    grade: job.job.grade.name,
    commonLengths: job.job.origin === 'common lengths',
    kerfMm: job.job.kerf.mm,
    kerfFrom: job.job.kerf.from,
    status: statusWords(plan),
    proof: plan.proof ?? null,
    by: plan.by,
    isStopped: plan.isStopped,
    ...(job.job.stocks.every(({ price }) => price !== undefined)
      ? { leastCost: plan.bound }
      : { leastLengthMm: plan.bound }),
    cost: cost ?? null,
    partsKg: mass.netKg,
    boughtKg: mass.boughtKg,
    dropsKg: mass.dropsKg,
    scrapKg: mass.scrapKg,
    buy: job.purchases.map(({ stock, bars, massKg, cost: each }) => ({
      barLengthMm: stock.lengthMm,
      bars,
      massKg,
      cost: each ?? null,
    })),
    bars: job.bars.map(barJson),
    marks: job.shares.map(({ part, pieces, share, boughtKg, cost: each }) => ({
      mark: part.mark,
      pieces,
      lengthMm: part.longMm,
      share,
      boughtKg,
      cost: each ?? null,
    })),
    short: job.shortages.map((shortage) => ({
      mark: shortage.part.mark,
      pieces: shortage.pieces,
      lengthMm: shortage.part.longMm,
      why: whyShort(shortage),
    })),
  };
}

function barJson({ pattern, stock, bars, pieces, restMm, isKept }: CutBar): Record<string, unknown> {
  return {
    pattern,
    barLengthMm: stock.lengthMm,
    bars,
    restMm,
    isDropKept: isKept,
    cuts: pieces.map(({ letter, part, startMm, endMm, runMm, push, ...piece }) => ({
      ...mitersJson(part, piece.isTurnedRound),
      letter,
      mark: part.mark,
      lengthMm: part.longMm,
      startMm,
      endMm,
      cutAtMm: runMm,
      backGaugeMm: 'mm' in push ? push.mm : null,
      leanLeftDegrees: piece.leanLeftRad / radianPerDegree,
      leanRightDegrees: piece.leanRightRad / radianPerDegree,
      isTurnedOver: piece.isTurnedOver,
      isTurnedRound: piece.isTurnedRound,
    })),
  };
}

/** As the piece lies in the bar; of a part that is not nested the leans are not known. */
function mitersJson(part: JobPart, isTurnedRound: boolean): Record<string, unknown> {
  const [left, right] = mitersInBar(part, isTurnedRound);
  return {
    miterLeftDegrees: left / radianPerDegree,
    miterRightDegrees: right / radianPerDegree,
    isOtherHand: part.isOtherHand ?? false,
    notNested: part.notNested ?? null,
  };
}
