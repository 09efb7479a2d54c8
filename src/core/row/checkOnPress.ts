import type { Finding } from '../check/finding.js';
import { refusal } from '../check/finding.js';
import { shearStrengthMPa } from '../material/shearStrength.js';
import type { Press } from '../press/press.js';
import { punchFindings } from '../press/punchStation.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { check, type Check } from './check.js';
import { cutFindings } from './cutOnPress.js';
import { inAnyFace } from './inAnyFace.js';
import type { Layouts } from './layout/layoutOf.js';
import type { LaidGroup } from './layout/layGroup.js';
import { otherWorkChecks } from './otherWorkChecks.js';
import { reachFindings } from './reach.js';
import type { PlacedGroup, PlacedHoles, ReadyRow } from './readyRow.js';
import { supportFindings } from './supports.js';
import { holeTitle } from './rowJob.js';
import { toolFindings } from './toolOnHand.js';

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
    check(asked, 'cut', (working) => cutFindings(press, row, shop, working)),
    ...row.places.map((placed) =>
      check(asked, holeTitle(placed.index), (working) =>
        holeFindings(press, row, placed, layouts, shop, working),
      ),
    ),
    ...otherWorkChecks(press, row, layouts, shop, asked),
    check(asked, 'supports', (working) => supportFindings(press, row, working)),
  ];
}

/** The holes of a group on a press, in whichever face they may be. */
function holeFindings(
  press: Press,
  row: ReadyRow,
  placed: PlacedHoles,
  layouts: Layouts,
  shop: Shop,
  working?: Working,
): Finding[] {
  const { index } = placed;
  const faces = placed.faces.flatMap((own) => {
    const laid = laidIn(layouts, own);
    return laid && own.process.made !== 'drill' ? [{ own, laid }] : [];
  });
  if (faces.length === 0) return [];
  const found = faces.map(({ own, laid }) => inFace(press, row, own, laid, shop, working));
  return inAnyFace(found, index).map((finding) => ({ ...finding, group: index }));
}

/** The group as it lies in a face, in the first layout that has it there: across a face every layout is alike. */
function laidIn({ layouts }: Layouts, { index, face }: PlacedGroup): LaidGroup | undefined {
  return layouts
    .flatMap(({ groups }) => groups)
    .find((laid) => laid.index === index && laid.holes[0]?.face === face.id);
}

function inFace(
  press: Press,
  { section, grade }: ReadyRow,
  { process, thicknessMm, face }: PlacedGroup,
  laid: LaidGroup,
  shop: Shop,
  working?: Working,
): Finding[] {
  const job = {
    hole: process.punched,
    thicknessMm,
    shearStrengthMPa: shearStrengthMPa(
      { grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') },
      working,
    ),
    holeToThickness: setting(shop, 'holeToThickness'),
    punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
  };
  const station = punchFindings(press, job, working);
  if (station.some(({ verdict }) => verdict === 'No station')) return station;
  return [
    ...station.map((finding) => (finding.rule === 'share' ? { ...finding, hole: process.punched } : finding)),
    ...reachFindings({ press, section, face, laid }, working),
    ...toolFindings(press, process.punched, thicknessMm, grade, shop, working),
  ];
}
