import type { Finding } from '../check/finding.js';
import { refusal } from '../check/finding.js';
import type { Grade } from '../material/grade.js';
import { shearStrengthMPa } from '../material/shearStrength.js';
import type { Press } from '../press/press.js';
import { punchFindings } from '../press/punchStation.js';
import { rememberedBy } from '../rememberedBy.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Hole } from '../tooling/hole.js';
import type { Working } from '../working/working.js';
import { check, type Check } from './check.js';
import { cutFindings } from './cutOnPress.js';
import { inAnyPlace } from './inAnyPlace.js';
import type { Layouts } from './layout/layoutOf.js';
import type { LaidGroup } from './layout/layGroup.js';
import { otherWorkChecks } from './otherWorkChecks.js';
import { reachFindings } from './reach.js';
import type { PlacedGroup, PlacedHoles, ReadyRow } from './job/readyRow.js';
import { supportFindings } from './supports.js';
import { holeTitle } from './job/rowJob.js';
import { toolFindings } from './toolOnHand.js';
import { isCutKnown, isGroupKnown, isMakingKnown } from './unclear.js';

const rememberedPunch = rememberedBy<readonly Finding[]>();
const rememberedTools = rememberedBy<readonly Finding[]>();

/** Everything one press has to say about a row: the cut, the holes, the supports. */
export function checkOnPress(
  press: Press,
  row: ReadyRow,
  layouts: Layouts,
  shop: Shop,
  asked: boolean,
): Check[] {
  const { problem, name } = press;
  if (problem !== undefined) {
    return [{ findings: [refusal(problem, name, { press: name, ofPressCell: true })], steps: [] }];
  }
  return [
    check(asked, 'cut', (working) => (isCutKnown(row) ? cutFindings(press, row, shop, working) : [])),
    ...row.places.map((placed) =>
      check(asked, holeTitle(placed.index), (working) =>
        holeFindings(press, row, placed, layouts, shop, working),
      ),
    ),
    ...otherWorkChecks(press, row, layouts, shop, asked),
    check(asked, 'supports', (working) => supportFindings(press, row, shop, working)),
  ];
}

/** A group in one of its faces, and how it lies there; left out where a cell that places it cannot be read. */
interface InFace {
  own: PlacedGroup;
  laid?: LaidGroup;
}

/** The holes of a group on a press, in whichever face they may be. */
function holeFindings(
  press: Press,
  row: ReadyRow,
  placed: PlacedHoles,
  layouts: Layouts,
  shop: Shop,
  working?: Working,
): readonly Finding[] {
  const { index } = placed;
  if (!isMakingKnown(row, index)) return [];
  const faces: InFace[] = [];
  for (const own of placed.faces) {
    if (own.process.made === 'drill') continue;
    const laid = laidIn(layouts, own);
    if (laid) faces.push({ own, laid });
    else if (!isGroupKnown(row, index)) faces.push({ own });
  }
  if (faces.length === 0) return [];
  const [first] = faces;
  if (first && faces.length === 1) return inFace(press, row, first, shop, index, working);
  const found = faces.map((each) => inFace(press, row, each, shop, undefined, working));
  return inAnyPlace(found, { cell: 'Leg', group: index }).map((finding) => ({ ...finding, group: index }));
}

/** The group as it lies in a face, in the first layout that has it there: across a face every layout is alike. */
function laidIn({ layouts }: Layouts, { index, face }: PlacedGroup): LaidGroup | undefined {
  for (const { groups } of layouts) {
    const laid = groups.find((each) => each.index === index && each.holes[0]?.face === face.id);
    if (laid) return laid;
  }
  return undefined;
}

/** What a press finds of the holes in one face, as findings of `group` where that is given. */
function inFace(
  press: Press,
  { section, grade, lengthMm, miterRad }: ReadyRow,
  { own, laid }: InFace,
  shop: Shop,
  group: number | undefined,
  working?: Working,
): readonly Finding[] {
  const { process, thicknessMm, face } = own;
  const hole = process.punched;
  const values = [thicknessMm, grade, shop, group];
  const punch = () => ofGroup(punchedOn(press, hole, thicknessMm, grade, shop, working), group);
  const station = working ? punch() : rememberedPunch(press, hole, values, punch);
  if (station.some(({ verdict }) => verdict === 'No station')) return station;
  const turnable = lengthMm !== undefined && miterRad === 0 ? { lengthMm } : {};
  const reach = laid
    ? ofGroup(reachFindings({ press, section, face, laid, ...turnable }, working), group)
    : [];
  const look = () => ofGroup(toolFindings(press, hole, thicknessMm, grade, shop, working), group);
  return [...station, ...reach, ...(working ? look() : rememberedTools(press, hole, values, look))];
}

function ofGroup(findings: Finding[], group: number | undefined): Finding[] {
  return group === undefined ? findings : findings.map((finding) => ({ ...finding, group }));
}

/** A hole on the punch station, wherever it lies. */
function punchedOn(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): Finding[] {
  const job = {
    hole,
    thicknessMm,
    shearStrengthMPa: shearStrengthMPa(
      { grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') },
      working,
    ),
    holeToThickness: setting(shop, 'holeToThickness'),
    punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
    punchEntryMm: setting(shop, 'punchEntryMm'),
  };
  return punchFindings(press, job, working).map((finding) =>
    finding.rule === 'share' ? { ...finding, hole } : finding,
  );
}
