import type { Finding, FindingOf } from '../check/finding.js';
import type { Thing } from '../check/rowFact.js';
import type { LengthUnit } from '../quantity/units.js';
import { blankCellSentence, reachOpenSentence } from './blankCells.js';
import { cellName } from './cellWords.js';
import { runsOver } from './distanceSentence.js';
import { isOpenBolt, isOpenPlace, openBoltSentence, openPlaceSentence } from './openDistances.js';
import { say } from './say.js';

/** The sentences of findings in their order; what several of them leave open alike is said once. */
export function sentencesOf(findings: readonly Finding[], unit: LengthUnit): string[] {
  const told = worthTelling(findings);
  const done = new Set<string>();
  const texts = told.map((finding) => {
    const key = keyOf(finding);
    if (key === undefined) return say(finding, unit);
    if (done.has(key)) return '';
    done.add(key);
    return together(told.filter((each) => keyOf(each) === key));
  });
  return asSentences(texts);
}

/** Whole sentences, each once. */
export function asSentences(texts: readonly string[]): string[] {
  return [...new Set(texts.filter((text) => text !== '').map(asSentence))];
}

function asSentence(text: string): string {
  const full = /[.?]$/.test(text) ? text : `${text}.`;
  return full.charAt(0).toUpperCase() + full.slice(1);
}

/** What findings are told together by. */
function keyOf(finding: Finding): string | undefined {
  switch (finding.rule) {
    case 'distance':
      if (isOpenPlace(finding)) return `places ${finding.group}`;
      return isOpenBolt(finding) ? `bolt ${finding.group}` : undefined;
    case 'blank cell':
      return `blank ${cellName(finding.cell)} ${finding.partly}`;
    case 'reach open':
      return `reach ${finding.group} ${finding.press}`;
    default:
      return undefined;
  }
}

function together(findings: readonly Finding[]): string {
  const of = <Rule extends Finding['rule']>(rule: Rule) =>
    findings.filter((finding): finding is FindingOf<Rule> => finding.rule === rule);
  const distances = of('distance');
  if (distances.some(isOpenPlace)) return openPlaceSentence(distances);
  if (distances.length > 0) return openBoltSentence(distances);
  return blankCellSentence(of('blank cell')) + reachOpenSentence(of('reach open'));
}

/** Where a hole runs over something, how near it may come to it is not told as well. */
function worthTelling(findings: readonly Finding[]): Finding[] {
  const over = new Set(
    findings
      .flatMap((finding) => (finding.rule === 'choice' ? finding.failing : [finding]))
      .flatMap((finding) => (finding.rule === 'distance' && runsOver(finding) ? [betweenKey(finding)] : [])),
  );
  return findings.filter(
    (finding) => finding.rule !== 'distance' || runsOver(finding) || !over.has(betweenKey(finding)),
  );
}

function betweenKey({ between }: FindingOf<'distance'>): string {
  return between.map(thingKey).join(' to ');
}

function thingKey(thing: Thing): string {
  switch (thing.is) {
    case 'hole':
      return `hole ${thing.group}`;
    case 'edge':
      return `${thing.cause.is} ${thing.cause.number}`;
    case 'bend':
      return `bend ${thing.index}`;
  }
}
