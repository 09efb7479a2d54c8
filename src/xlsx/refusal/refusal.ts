/** A workbook that cannot be read or is refused. The message is one plain sentence for the user. */
export class WorkbookRefused extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'WorkbookRefused';
  }
}

/** Throws {@link WorkbookRefused} with one sentence. */
export function refuseWorkbook(sentence: string): never {
  throw new WorkbookRefused(sentence);
}
