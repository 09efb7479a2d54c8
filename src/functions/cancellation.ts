/** The last argument of a call that the host may cancel. */
interface Invocation {
  functionName?: string;
  onCanceled?: () => void;
}

/** A call ended before its result was there, since the host asked for that. */
export class CallCanceled extends Error {
  constructor() {
    super('The program stopped this call before its end: enter the cell again (F2, then Enter).');
  }
}

const isInvocation = (value: unknown): value is Invocation =>
  typeof value === 'object' && value !== null && 'functionName' in value;

/** Tells when the host cancels the call with these inputs: the formula was changed, or its result is outdated. */
export function cancellation(inputs: readonly unknown[]): AbortSignal {
  const controller = new AbortController();
  const invocation = inputs.at(-1);
  if (isInvocation(invocation)) invocation.onCanceled = () => controller.abort();
  return controller.signal;
}
