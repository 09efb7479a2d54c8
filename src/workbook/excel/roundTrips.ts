import { WorkbookError } from '../workbookError.js';
import { asWorkbookError } from './hostErrors.js';

/** One round trip to the host: what is queued so far is done, what is loaded can be read afterwards. */
export type Sync = () => Promise<void>;

/** Runs requests of the workbook, counts their round trips, and turns the host's errors into sentences. */
export class RoundTrips {
  /** Round trips that somebody waited for. */
  count = 0;

  async run<Result>(
    request: (context: Excel.RequestContext, sync: Sync) => Promise<Result>,
  ): Promise<Result> {
    if (typeof Excel === 'undefined')
      throw new WorkbookError('unsupported', 'There is no workbook here: open the add-in in a spreadsheet.');
    try {
      return await Excel.run((context) => request(context, () => this.sync(context)));
    } catch (error) {
      throw asWorkbookError(error);
    }
  }

  async sync(context: Excel.RequestContext): Promise<void> {
    this.count += 1;
    await context.sync();
  }
}
