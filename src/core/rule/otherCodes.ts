import { type Failure, InputError } from '../inputError.js';

/** The codes a row can be judged by for holes and edges alike, as the setting Edge code names them. */
const codesOfRows: readonly string[] = ['AISC', 'EN'];

/**
 * Runs the rule of a code; where its table lacks the bolt, the refusal says which other codes have it: to who calls
 * a function as an argument, to who fills in a row as the setting of the shop.
 * @param code the code asked for
 * @param codes all codes the rule knows
 * @param rule the rule by a code; it throws `unknown` for a bolt that stands in no row of the code's table
 * @returns what the rule gives by the code asked for
 */
export function withOtherCodes<Code extends string, Result>(
  code: Code,
  codes: readonly Code[],
  rule: (code: Code) => Result,
): Result {
  try {
    return rule(code);
  } catch (error) {
    if (!(error instanceof InputError) || !lacksBolt(error.failure)) throw error;
    throw namingOthers(
      error.failure,
      codes.filter((each) => each !== code && gives(rule, each)),
    );
  }
}

function lacksBolt({ code, argument }: Failure): boolean {
  return code === 'unknown' && argument === 'Bolt';
}

function gives<Code>(rule: (code: Code) => unknown, code: Code): boolean {
  try {
    rule(code);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

function namingOthers(failure: Failure, others: readonly string[]): InputError {
  const { allowed } = failure;
  const ofRows = others.filter((each) => codesOfRows.includes(each));
  const or = (codes: readonly string[], fix: string) =>
    codes.length === 0 ? allowed : `${allowed.replace(/\.$/, '')}, or ${fix}.`;
  return new InputError({
    ...failure,
    allowed: or(others, `give code ${listed(others)}`),
    allowedInCell: or(ofRows, `set Edge code to ${listed(ofRows)} on the Shop sheet`),
  });
}

/** `EN`, `EN or AS`, `AISC, CSA or AS`. */
function listed(codes: readonly string[]): string {
  const last = codes.at(-1) ?? '';
  return codes.length < 2 ? last : `${codes.slice(0, -1).join(', ')} or ${last}`;
}
