import { InputError } from '../../../core/inputError.js';
import { groupFields } from '../../../core/row/headings/heading.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { columnLetters } from '../../../sheet/address.js';
import { shortText } from '../../shared/shortText.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';

/** Why the headings of a list that begins in a column cannot be read, and what to do; undefined where they can. */
export function headingsProblem(matches: readonly ColumnMatch[], firstColumn: number): string | undefined {
  const pair = alike(matches);
  if (pair) return sameField(pair, firstColumn);
  const refused = refusal(headingsOf(matches));
  return refused && `${refused} Say above what the columns are.`;
}

function refusal(headings: readonly string[]): string | undefined {
  try {
    readHeadings(headings);
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
}

type Pair = readonly [ColumnMatch, ColumnMatch];

/**
 * The first two columns that cannot both be what they are taken for. A heading of its own goes before a synonym;
 * what somebody chose for a column must not be passed over like that.
 */
function alike(matches: readonly ColumnMatch[]): Pair | undefined {
  for (const [at, second] of matches.entries())
    for (const first of matches.slice(0, at)) {
      if (first.field === undefined || first.field !== second.field) continue;
      const chosen = first.field !== 'Mark' && (first.rename ?? second.rename) !== undefined;
      const beside = first.field === 'Section' ? [] : ['Section'];
      if (chosen || refusal([...beside, ...headingsOf([first, second])]) !== undefined)
        return [first, second];
    }
  return undefined;
}

function sameField([first, second]: Pair, firstColumn: number): string {
  const field = first.field ?? '';
  const named = ({ at, heading }: ColumnMatch) =>
    `${columnLetters(firstColumn + at)} (${shortText(heading, 30)})`;
  const further = groupFields.some(({ name }) => name === field);
  const or = further
    ? `, or “${field} 2” where it belongs to a second group of holes`
    : ', or what else it is';
  return `Columns ${named(first)} and ${named(second)} are both read as ${field}. Choose “not read” for one of them above${or}.`;
}
