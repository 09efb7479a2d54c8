import type { Finding, FindingOf } from '../check/finding.js';
import { sentenceInCell } from '../inputError.js';
import type { LengthUnit } from '../quantity/units.js';
import type { PressChoice } from '../row/checksOnPress.js';
import type { Reading } from '../row/reading.js';
import type { CheckedRow } from '../row/rowResult.js';
import { cellNames } from './cellWords.js';
import { openWords } from './distanceSentence.js';
import { holeTitle } from './holeTitle.js';
import { readingSentence, readingWords } from './readingWords.js';
import { say } from './say.js';

/** The note of a row: every failure, worst first; what is open; how the press was chosen; what was read and assumed. */
export function noteOf(row: CheckedRow, unit: LengthUnit): string {
  const { findings, readings, choice } = row;
  const sentences = [
    ...openSentences(findings, unit),
    ...readings.map(readingSentence),
    ...(choice ? [choiceSentence(choice)] : []),
    echoOf(readings, unit),
  ];
  return asSentences(sentences).join(' ');
}

/** What was read and assumed, as one sentence; empty where nothing was. */
export function echoOf(readings: readonly Reading[], unit: LengthUnit): string {
  const echo = readings.map((reading) => readingWords(reading, unit)).filter((words) => words !== '');
  return echo.length > 0 ? `Read: ${[...new Set(echo)].join('; ')}.` : '';
}

/** The sentences of findings, those of holes that are not placed taken together. */
export function openSentences(findings: readonly Finding[], unit: LengthUnit): string[] {
  return asSentences([
    ...findings.filter((finding) => !isOpenPlace(finding)).map((finding) => say(finding, unit)),
    ...openPlaces(findings.filter(isOpenPlace)),
  ]);
}

function asSentences(texts: readonly string[]): string[] {
  return [...new Set(texts.filter((text) => text !== '').map(sentence))];
}

function isOpenPlace(finding: Finding): finding is FindingOf<'distance'> {
  return finding.rule === 'distance' && finding.outcome === 'open' && finding.given.least !== finding.given.most;
}

/** What holes that are not placed leave open: one sentence for each group of them. */
function openPlaces(findings: readonly FindingOf<'distance'>[]): string[] {
  const groups = [...new Set(findings.map(({ group }) => group))];
  return groups.map((group) => {
    const own = findings.filter((finding) => finding.group === group);
    const missing = own.flatMap((finding) => finding.missing);
    const blank = new Set(missing.map(({ cell }) => cell)).size > 1 ? 'are' : 'is';
    return `${holeTitle(group)}: ${cellNames(missing)} ${blank} blank, so ${openWords(own)} is open.`;
  });
}

/** How the press was chosen, where the row names none. */
export function choiceSentence({ is, press, of, notTried, nearest }: PressChoice): string {
  const others = notTried.map(({ press: name, failures }) => {
    const problems = failures.map((failure) => sentenceInCell(failure));
    return `${name} was not tried: ${[...new Set(problems)].join(' ')}`;
  });
  const readable = notTried.length > 0 ? ' that can be read' : '';
  const told = {
    sure: `No press given: ${press} chosen of ${of}${readable}.`,
    nearest: `No press given, and none is sure to run it: ${press} comes nearest.`,
    unread: `No press given, and none is sure to run it: ${press} has a cell that cannot be read${
      nearest ? `; of the others ${nearest.press} comes nearest: ${nearest.verdict}` : ''
    }.`,
  };
  return [told[is], ...others].join(' ');
}

function sentence(text: string): string {
  const full = text.endsWith('.') ? text : `${text}.`;
  return full.charAt(0).toUpperCase() + full.slice(1);
}
