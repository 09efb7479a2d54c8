import type { FindingOf } from '../check/finding.js';
import { blankWords, cellNames } from './cellWords.js';
import { holeTitle } from '../row/job/rowJob.js';
import { listWords } from './listWords.js';

type Distance = FindingOf<'distance'>;

/** Open, since the row does not place the holes: any distance of a range may be the one. */
export function isOpenPlace(finding: Distance): boolean {
  return finding.outcome === 'open' && finding.given.least !== finding.given.most;
}

/** Open, since the code goes by a bolt that the row does not give. */
export function isOpenBolt(finding: Distance): boolean {
  return finding.outcome === 'open' && !isOpenPlace(finding) && finding.basis?.unknown === 'no bolt';
}

/** What the holes of a group leave open that are not placed. */
export function openPlaceSentence(findings: readonly Distance[]): string {
  const missing = findings.flatMap((finding) => finding.missing);
  return `${whoOf(findings)}: ${blankWords(missing)}, so ${distancesOf(findings)} are not known.`;
}

/** What the holes of a group leave open whose bolt is not known. */
export function openBoltSentence(findings: readonly Distance[]): string {
  const codes = [...new Set(findings.map(({ basis }) => basis?.code ?? 'the code'))].join(' and ');
  const bolts = findings.flatMap(({ missing }) => missing.filter(({ cell }) => cell === 'Bolt'));
  return `${whoOf(findings)}: no bolt is given, and ${codes} goes by the bolt, so ${distancesOf(findings)} are not checked by it. Fill in ${cellNames(bolts)}, or write none where it is no bolt hole.`;
}

function whoOf([finding]: readonly Distance[]): string {
  return finding?.group === undefined ? 'bend' : holeTitle(finding.group);
}

/** The distances of findings as a sentence names them: `the distances to the edges and between holes`. */
function distancesOf(findings: readonly Distance[]): string {
  const kinds = findings.map(({ kind }) => {
    if (kind.startsWith('edge') || kind === 'heel' || kind === 'flange') return 'to the edges';
    return kind === 'hole to bend' ? 'to the bends' : 'between holes';
  });
  return `the distances ${listWords([...new Set(kinds)])}`;
}
