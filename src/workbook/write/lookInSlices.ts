import { rowSlices, type Slice } from '../slices.js';
import { WorkbookError } from '../workbookError.js';
import type { CellState, Look, WriteHost } from '../writeHost.js';

/** Cells looked at in one message: values, formulas, types and formats stay below what a host gives. */
const cellsPerLook = 20_000;

/** A question, or rows of one, with the place of its answer. */
interface Asked {
  look: Look;
  of: number;
}

/**
 * Asks the host for everything in one round trip where it fits, for large areas in slices of rows. The
 * answers come in the order of the questions.
 */
export async function lookInSlices(looks: readonly Look[], host: WriteHost): Promise<unknown[]> {
  const answers: unknown[] = [];
  const asked = looks.flatMap((look, of) => inRows({ look, of }, cellsPerLook));
  for (const message of packed(asked)) await ask(message, answers, host);
  return looks.map((_, at) => answers[at]);
}

function inRows({ look, of }: Asked, cells: number): Asked[] {
  if (look.look !== 'cells') return [{ look, of }];
  return rowSlices(look.area, of, cells).map(({ area }: Slice) => ({ look: { look: 'cells', area }, of }));
}

function packed(asked: readonly Asked[]): Asked[][] {
  const messages: Asked[][] = [];
  let room = 0;
  for (const each of asked) {
    const size = cellsOf(each);
    if (messages.length === 0 || size > room) {
      messages.push([]);
      room = cellsPerLook;
    }
    messages.at(-1)?.push(each);
    room -= size;
  }
  return messages;
}

function cellsOf({ look }: Asked): number {
  return look.look === 'cells' ? look.area.rows * look.area.columns : 0;
}

async function ask(message: readonly Asked[], answers: unknown[], host: WriteHost): Promise<void> {
  try {
    const seen: readonly unknown[] = await host.look(message.map(({ look }) => look));
    message.forEach(({ look, of }, at) => {
      if (look.look === 'cells') append(answers, of, seen[at] as CellState);
      else answers[of] = seen[at];
    });
  } catch (error) {
    if (!(error instanceof WorkbookError) || error.trouble !== 'too large') throw error;
    const halves = halved(message);
    if (halves.length < 2) throw error;
    for (const half of halves) await ask(half, answers, host);
  }
}

function append(answers: unknown[], of: number, { contents, formats }: CellState): void {
  const whole = (answers[of] ??= { contents: [], formats: [] }) as CellState;
  for (const row of contents) whole.contents.push(row);
  for (const row of formats) whole.formats.push(row);
}

/** A message too large for the host in two; a single row stays one. */
function halved(message: readonly Asked[]): Asked[][] {
  const [first] = message;
  if (!first) return [];
  const parts = message.length > 1 ? [...message] : inRows(first, Math.ceil(cellsOf(first) / 2));
  const middle = Math.ceil(parts.length / 2);
  return [parts.slice(0, middle), parts.slice(middle)].filter((half) => half.length > 0);
}
