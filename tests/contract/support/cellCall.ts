import {
  type BlankForm,
  type HostArgument,
  isHostError,
  type HostOptions,
  prepareCall,
} from '../../../src/headless/functions/hostCall.js';
import { metadataOf } from './built.js';
import { type Invocation, OfficialRuntime, type Outcome } from './officialRuntime.js';

/** The forms in which hosts send the blank cells of a parameter of type any. */
export const blankForms: readonly BlankForm[] = [
  null,
  '',
  0,
  { type: 'Empty', basicType: 'Empty', basicValue: '' },
];

const options: HostOptions = { blank: null, allowErrors: true };

/** Errors travel to the runtime in a form of their own. */
function onTheWire(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(onTheWire);
  const { code } = (value ?? {}) as { code?: unknown };
  return typeof code === 'string' ? { type: 'CustomFunctionError', code } : value;
}

/** A call as a cell makes it: what the host converts, refuses or passes on, driven by the metadata. */
export interface CellCall {
  name: string;
  given: HostArgument[];
  blank?: BlankForm;
}

/** Calls of cells through the runtime, all in one message; answers in their order. */
export async function callCells(runtime: OfficialRuntime, calls: readonly CellCall[]): Promise<Outcome[]> {
  const outcomes: (Outcome | undefined)[] = [];
  const sent: { at: number; invocation: Invocation }[] = [];
  calls.forEach(({ name, given, blank = null }, at) => {
    const metadata = metadataOf(name);
    const prepared = prepareCall(metadata, given, { ...options, blank });
    if (isHostError(prepared))
      outcomes[at] = { error: { code: prepared.error, message: prepared.message ?? '' } };
    else {
      const parameters = prepared.arguments.map(onTheWire);
      sent.push({ at, invocation: { id: metadata.id, parameters } });
    }
  });
  const answers = await runtime.callAll(sent.map(({ invocation }) => invocation));
  sent.forEach(({ at }, index) => (outcomes[at] = answers[index]));
  return calls.map((_, at) => {
    const outcome = outcomes[at];
    if (!outcome) throw new Error(`call ${at} was not answered`);
    return outcome;
  });
}

export async function callCell(
  runtime: OfficialRuntime,
  name: string,
  ...given: HostArgument[]
): Promise<Outcome> {
  const [outcome] = await callCells(runtime, [{ name, given }]);
  if (!outcome) throw new Error(`${name} was not answered`);
  return outcome;
}
