/** What went wrong, as data: the one shape every refusal in the library has. */
export interface Failure {
  /** `invalid`: the input cannot be read or is out of range. `unknown`: no such grade, press, entry. */
  code: 'invalid' | 'unknown';
  /** The argument or cell the input came from, in the words a user sees: `Thickness`. */
  argument: string;
  /** What was read, as text. */
  received: string;
  /** What is wrong with it, a clause that follows the argument: `'3/8 inc' is not a length.` */
  problem: string;
  /** What is allowed and how to fix it: `Write 3/8, 9.5 mm or 0.375.` */
  allowed: string;
  /** The same for who fills in a cell of a list or of a Shop table, where it is not what a call can do. */
  allowedInCell?: string;
  /** What happened to the input, where that is known. */
  cause?: 'turned into a date';
}

/** The only error the library throws on purpose. Its message is one readable sentence or two. */
export class InputError extends Error {
  readonly failure: Failure;
  /** The message for who fills in a cell of a list or of a Shop table. */
  readonly messageInCell: string;

  constructor(failure: Failure) {
    super(sentence(failure, failure.allowed));
    this.name = 'InputError';
    this.failure = failure;
    this.messageInCell = sentenceInCell(failure);
  }
}

/** The sentence for who fills in a cell of a list or of a Shop table. */
export function sentenceInCell(failure: Failure): string {
  return sentence(failure, failure.allowedInCell ?? failure.allowed);
}

function sentence({ argument, problem }: Failure, allowed: string): string {
  return `${argument}: ${problem} ${allowed}`.trim();
}

/** Throws an {@link InputError} for input that cannot be read or lies outside its range. */
export function refuse(
  argument: string,
  received: string,
  problem: string,
  allowed: string,
  allowedInCell?: string,
): never {
  const failure = { code: 'invalid', argument, received, problem, allowed } as const;
  throw new InputError(allowedInCell === undefined ? failure : { ...failure, allowedInCell });
}

/** Throws an {@link InputError} for a name that is in no table. */
export function refuseUnknown(argument: string, received: string, problem: string, allowed: string): never {
  throw new InputError({ code: 'unknown', argument, received, problem, allowed });
}

/** What a reading gives; undefined where it refuses what it reads. */
export function ifRead<Value>(read: () => Value): Value | undefined {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return undefined;
  }
}
