import type { FindingOf } from '../check/finding.js';
import type { Unchecked } from '../check/rowFact.js';
import { governsOf } from '../press/limit.js';
import { blankWords, cellName } from './cellWords.js';
import { holeTitle } from '../row/job/rowJob.js';
import { listWords } from './listWords.js';

const unchecked: Record<Unchecked, string> = {
  'far end': 'nothing was checked against the far end',
  'longest bar': 'the length and mass that the press carries were not checked',
  'shortest piece': 'the shortest piece the press can hold was not checked',
  'notches against the rest': 'the notches were not checked against the rest of the part',
  'bends against the rest': 'flanges, and holes beside the bends, were not checked',
  'mitered leg': 'it is not known whether a press that miters one leg makes it',
  'hand of the miter': 'it is not known whether a press that makes one hand of miter makes it',
};

/** What one cell leaves unchecked that is blank, or does not say it all. */
export function blankCellSentence(findings: readonly FindingOf<'blank cell'>[]): string {
  const [first] = findings;
  if (!first) return '';
  const clauses = [...new Set(findings.map((finding) => unchecked[finding.unchecked]))];
  const left = [clauses.slice(0, -1).join(', '), ...clauses.slice(-1)]
    .filter((text) => text !== '')
    .join(', and ');
  const name = cellName(first.cell);
  return first.partly
    ? `${name} does not say how far from the end, so ${left}. Add the distance.`
    : `${name} is blank, so ${left}. Fill it in.`;
}

/** Which limits of the press are open since the holes are not placed across the part. */
export function reachOpenSentence(findings: readonly FindingOf<'reach open'>[]): string {
  const [first] = findings;
  if (!first) return '';
  const items = [...new Set(findings.map(({ item }) => governsOf(item)))];
  const missing = findings.flatMap((finding) => finding.missing);
  const were = items.length > 1 ? 'were' : 'was';
  return `${holeTitle(first.group)}: ${blankWords(missing)}, so ${listWords(items)} of ${first.press ?? 'the press'} ${were} not checked.`;
}
