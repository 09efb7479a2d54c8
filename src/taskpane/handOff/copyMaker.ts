export type CopyKind = 'shop' | 'customer';

/** A copy of the workbook's file, made but not yet saved, with what is in it and what is not. */
export interface MadeCopy {
  bytes: Uint8Array;
  /** Formulas that became values. */
  formulas: number;
  sheets: readonly string[];
  names: readonly string[];
  parts: readonly string[];
  /** What a reader may still find, one sentence each. */
  stays: readonly string[];
}

/**
 * What a page offers a pane where the file of the workbook can be read and saved. It puts it on the global object as
 * `tonrowCopies`. Both throw an error with one sentence.
 */
export interface CopyMaker {
  make(kind: CopyKind): Promise<MadeCopy>;
  save(copy: MadeCopy, kind: CopyKind): Promise<void>;
}

export function copyMaker(): CopyMaker | undefined {
  return (globalThis as { tonrowCopies?: CopyMaker }).tonrowCopies;
}
