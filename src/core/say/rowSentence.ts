import type { Finding, FindingOf } from '../check/finding.js';
import type { RowFinding } from '../check/rowFact.js';
import { quoted } from '../quantity/cellValue.js';
import type { LengthUnit } from '../quantity/units.js';
import { describeHole } from '../tooling/hole.js';
import { blankCellSentence, reachOpenSentence } from './blankCells.js';
import { cellName, cellNames } from './cellWords.js';
import { basisWords, distanceSentence, runsOver } from './distanceSentence.js';
import { edgeWords } from './edgeWords.js';
import { holeTitle } from '../row/job/rowJob.js';
import { listWords } from './listWords.js';
import { problemWords } from './problemWords.js';
import { size } from './sizes.js';
import { toolSentence } from './toolSentence.js';

/** What a check of the row itself says; empty for what is held. `say` says the findings a choice depends on. */
export function rowSentence(
  finding: RowFinding,
  unit: LengthUnit,
  say: (finding: Finding) => string,
): string {
  if (finding.outcome === 'held') return '';
  const title = holeTitle(finding.group);
  switch (finding.rule) {
    case 'distance':
      return distanceSentence(finding, unit);
    case 'no press in the shop':
      return 'The shop has no press. Add one on the Shop sheet.';
    case 'press not known':
      return `${quoted(finding.name)} is not a press of the shop. Presses: ${finding.names.join(', ')}.`;
    case 'work without part':
      return `${quoted(finding.text)} says work, and no part stands in this row, so the work is not checked. Put it in the row of its part, in the columns of that work.`;
    case 'bolt in hole':
      return `${title}: a hole of ${size(finding.holeMm, unit)} does not take bolt ${finding.bolt}. Correct one of them.`;
    case 'hole off the part':
      return offThePart(finding, title, unit);
    case 'not held':
      return notHeldSentence(finding, title, unit);
    case 'cut on angle':
      return cutOnAngle(finding, unit);
    case 'holes in a bar':
      return `${title}: drilled; no press station punches holes in ${finding.designation}, and their distances were not checked.`;
    case 'hole over the bar':
      return `${title}: a hole of ${size(finding.holeMm, unit)} leaves nothing of ${finding.designation}, ${size(finding.sizeMm, unit)}. Correct the hole or the section.`;
    case 'hole in a cut':
      return `${title}: a hole lies in ${edgeWords(finding.cause)}, where there is no steel. Correct ${listWords(finding.correct.map(cellName), 'or')}.`;
    case 'sheared end':
      return `End kind: ${finding.designation} is sawn, no press shears it. Write sawn, or bought under Cut by.`;
    case 'outline':
      return problemWords(finding.problem, unit);
    case 'work on the part':
      return `${finding.cell} ${size(finding.given, unit)}: the part is ${size(finding.limit, unit)} ${finding.along}. Correct ${finding.cell}.`;
    case 'corners':
      return `Corners ${finding.count}: ${finding.designation} has 4 corners to clip. Correct Corners.`;
    case 'bend from edge to edge':
      return `Bend length ${size(finding.givenMm, unit)}: a bend ${finding.runs} the part runs from edge to edge, ${size(finding.runMm, unit)}. Correct Bend length or Bend at.`;
    case 'bend on the part':
      return `Bend length ${size(finding.givenMm, unit)}: the part is ${size(finding.lengthMm, unit)} by ${size(finding.widthMm, unit)}. Correct Bend length.`;
    case 'bend off the part':
      return bendOffThePart(finding, unit);
    case 'bends cross': {
      const [a, b] = finding.bends;
      return `bend ${a + 1} and bend ${b + 1} cross on the plate: cut the corner out, or correct Bend at.`;
    }
    case 'room':
      return roomSentence(finding, title, unit);
    case 'room at the edges':
      return `${title}: wherever it lies, ${size(finding.shortMm, unit)} is missing between ${listWords(finding.between.map((is) => edgeWords({ is })))}. Correct the part or the holes.`;
    case 'choice':
      return choiceSentence(finding, say);
    case 'too many choices':
      return `${cellNames(finding.cells)} leave more possible parts than are tried. Fill them in.`;
    case 'blank cell':
      return blankCellSentence([finding]);
    case 'reach open':
      return reachOpenSentence([finding]);
    case 'station for work':
      return `no press station makes a ${finding.work} in ${finding.designation}.`;
    case 'tool on hand':
      return toolSentence(finding, unit);
    case 'tool body':
      if (finding.noTools) {
        return `Punch body of ${finding.press ?? 'the press'} was not checked: no list of tools says which bodies the punches have. Add the Tools table, or write none.`;
      }
      return `Punch body of ${finding.press ?? 'the press'} is blank, so the body of punch ${describeHole(finding.hole, unit)} was not checked.`;
    case 'off press':
      return '';
  }
}

function notHeldSentence(finding: FindingOf<'not held'>, title: string, unit: LengthUnit): string {
  switch (finding.why) {
    case 'bends across each other':
      return 'Bends run across each other: whether the punch fits between the flanges that stand was not checked.';
    case 'bend missing':
      return 'The section is called bent and the row gives no bend, so none was checked. Fill in Bend length, or write PL.';
    case 'galvanized and thick':
      return 'Galvanized steel of 3/4 in (19 mm) or more may crack where it is punched or bent: ask the engineer; drill or ream.';
    case 'uneven lines':
      return `${title}: an odd number of holes in two lines, the odd one taken in the first line. Give their places under Holes at.`;
    case 'loose bolt':
      return `${title}: ${size(finding.holeMm, unit)} is wider than any hole for bolt ${finding.bolt}. Correct the hole or the bolt, or write none under Bolt.`;
    case 'cut on a miter':
      return cutOnMiter(finding);
    case 'work in a text':
      return `${finding.heading === '' ? 'A column without a heading' : finding.heading} says ${quoted(finding.text)}, which is not checked. Put what it changes in the columns of the part, or clear the cell.`;
    case 'unread columns':
      return unreadSentence(finding.headings);
  }
}

function cutOnMiter({ cuts, cells }: Extract<FindingOf<'not held'>, { why: 'cut on a miter' }>): string {
  const [many, who] = [cuts.length > 1, listWords(cuts.map(edgeWords))];
  const where = `where ${many ? 'they lie' : 'it lies'} on the slant was not checked`;
  if (cells.length > 0) {
    return `${who} may start on a mitered end, and ${where}. Fill in ${cellNames(cells)} to settle it.`;
  }
  return `${who} ${many ? 'start' : 'starts'} on a mitered end, and ${where}. Check it by hand.`;
}

function unreadSentence(headings: readonly string[]): string {
  const names = headings.map((heading) => (heading === '' ? 'a column without a heading' : heading));
  const said = listWords(names);
  return `${said.charAt(0).toUpperCase()}${said.slice(1)} ${names.length > 1 ? 'are' : 'is'} filled in and not read. Rename the column, or clear it.`;
}

function cutOnAngle(
  { work, designation, why, outcome, givenMm = 0, limitMm = 0 }: FindingOf<'cut on angle'>,
  unit: LengthUnit,
): string {
  if (why === 'depth') {
    const deep = `a ${work} ${size(givenMm, unit)} deep from the toe of ${designation} reaches its root, which begins at ${size(limitMm, unit)}`;
    return outcome === 'open' ? `${deep} in one leg: name the leg.` : `${deep}.`;
  }
  return outcome === 'open'
    ? `no station makes a ${work} at the heel of ${designation}: say where it is.`
    : `no station makes a ${work} at the heel of ${designation}, where the other leg stands.`;
}

function offThePart(
  { beyondMm, cause, face, sizeMm, correct }: FindingOf<'hole off the part'>,
  title: string,
  unit: LengthUnit,
): string {
  const along = cause.includes('end') || cause.startsWith('miter');
  const what = along || face === 'plate' ? 'part' : (face.split(' ')[0] ?? face);
  const is = `the ${what} is ${size(sizeMm, unit)} ${along ? 'long' : 'wide'}`;
  return `${title}: the center of a hole lies ${size(beyondMm, unit)} beyond ${edgeWords({ is: cause })}; ${is}. Correct ${listWords(correct.map(cellName), 'or')}.`;
}

function roomSentence(
  { count, most, pitchMm, basis }: FindingOf<'room'>,
  title: string,
  unit: LengthUnit,
): string {
  const rule = basis ? basisWords(false, basis) : 'press practice';
  const fit = most > 1 ? `at most ${most} fit` : most === 1 ? 'only one fits' : 'none fits';
  return `${title}: ${count} holes have no room on the part: at ${size(pitchMm, unit)} from center to center (${rule}), ${fit}. Correct Holes, Hole or Length.`;
}

function bendOffThePart({ index, runs, sizeMm }: FindingOf<'bend off the part'>, unit: LengthUnit): string {
  const bend = index > 0 ? `bend ${index + 1}` : 'bend';
  return `${bend}: its line lies beside the plate, which is ${size(sizeMm, unit)} ${runs === 'across' ? 'long' : 'wide'}. Correct Bend at.`;
}

/** What fails for some of what the row leaves to choose. */
function choiceSentence({ cells, failing }: FindingOf<'choice'>, say: (finding: Finding) => string): string {
  const [first] = failing;
  const worst = failing.find((each) => each.rule === 'distance' && runsOver(each)) ?? first;
  const what = worst ? say(worst) : '';
  const sided = cells.length === 1 && cells[0]?.cell === 'End';
  const fill = sided ? 'write left or right before it' : cells.length === 1 ? 'fill it in' : 'fill them in';
  return `${what} It depends on ${cellNames(cells)}: ${fill}.`;
}
