import { sentenceInCell } from '../inputError.js';
import type { LengthUnit } from '../quantity/units.js';
import type { PressChoice } from '../row/checksOnPress.js';
import type { Reading } from '../row/job/reading.js';
import type { CheckedRow } from '../row/rowResult.js';
import { readingSentence, readingWords } from './readingWords.js';
import { asSentences, sentencesOf } from './sentencesOf.js';

/** The note of a row: every failure, worst first; what is open; how the press was chosen; what was read and assumed. */
export function noteOf(row: CheckedRow, unit: LengthUnit): string {
  const { findings, readings, choice } = row;
  const sentences = [
    ...sentencesOf(findings, unit),
    ...readings.map(readingSentence),
    ...(choice ? [choiceSentence(choice)] : []),
    echoOf(readings, unit),
  ];
  return asSentences(sentences).join(' ');
}

/** What was read and assumed, as one sentence; empty where nothing was. */
export function echoOf(readings: readonly Reading[], unit: LengthUnit): string {
  const echo = readings.map((reading) => readingWords(reading, unit)).filter((words) => words !== '');
  return echo.length > 0 ? `Understood as: ${[...new Set(echo)].join('; ')}.` : '';
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
