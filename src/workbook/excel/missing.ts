import type { Look } from '../writeHost.js';
import { WorkbookError } from '../workbookError.js';
import type { RoundTrips } from './roundTrips.js';

interface Needed {
  kind: 'sheet' | 'table' | 'name';
  name: string;
}

/** Does what is asked; where something is not there, one more round trip finds out what. */
export async function refuseMissing<Result>(
  looks: readonly Look[],
  trips: RoundTrips,
  work: () => Promise<Result>,
): Promise<Result> {
  return namingWhatIsMissing(
    looks.flatMap((look) => neededFor(look) ?? []),
    trips,
    work,
  );
}

export async function namingWhatIsMissing<Result>(
  needed: readonly Needed[],
  trips: RoundTrips,
  work: () => Promise<Result>,
): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof WorkbookError) || error.trouble !== 'missing') throw error;
    const missing = await firstMissing(needed, trips);
    if (!missing) throw error;
    throw new WorkbookError('missing', `There is no ${missing.kind} "${missing.name}".`, { cause: error });
  }
}

function neededFor(look: Look): Needed | undefined {
  switch (look.look) {
    case 'cells':
    case 'merged':
      return { kind: 'sheet', name: look.area.sheet };
    case 'used':
      return { kind: 'sheet', name: look.sheet };
    case 'table':
      return { kind: 'table', name: look.name };
    default:
      return undefined;
  }
}

function firstMissing(needed: readonly Needed[], trips: RoundTrips): Promise<Needed | undefined> {
  return trips.run(async ({ workbook }, sync) => {
    const { worksheets, tables, names } = workbook;
    const collections = { sheet: worksheets, table: tables, name: names };
    const found = needed.map(({ kind, name }) => collections[kind].getItemOrNullObject(name).load('name'));
    await sync();
    return needed.find((_, at) => found[at]?.isNullObject);
  });
}
