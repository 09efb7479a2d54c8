import type { RowItem } from '../../core/row/rowItem.js';
import { canMakeFiles, openInHost, readHostFile } from './hostFile.js';

/*
 * What leaves the shop: copies made of the workbook's own file, by the host's means or the bench's.
 */

export type CopyKind = 'shop' | 'customer';

/** A copy of the workbook's file, made but not yet saved, with what is in it and what is not. */
export interface MadeCopy {
  bytes: Uint8Array;
  /** Formulas that became values. */
  formulas: number;
  sheets: readonly string[];
  names: readonly string[];
  parts: readonly string[];
  /** Columns of checks that are empty in it. */
  emptied: readonly string[];
  /** What a reader may still find, one sentence each. */
  stays: readonly string[];
}

/** Makes copies of the workbook's file and hands them over. Both throw an error with one sentence. */
export interface CopyMaker {
  make(kind: CopyKind, leaveOut?: readonly RowItem[]): Promise<MadeCopy>;
  /** Gives a sentence that says where the copy is. */
  save(copy: MadeCopy, kind: CopyKind): Promise<string>;
}

/** That of the page where it puts one on the global object as `tonrowCopies`, or of the host where it can. */
export function copyMaker(): CopyMaker | undefined {
  return (globalThis as { tonrowCopies?: CopyMaker }).tonrowCopies ?? (canMakeFiles() ? ofHost : undefined);
}

const ofHost: CopyMaker = {
  async make(kind, leaveOut = []) {
    const bytes = await readHostFile();
    const { valuesCopy } = await import(
      /* webpackChunkName: "values-copy" */ '../../xlsx/freeze/valuesCopy.js'
    );
    return valuesCopy(bytes, { kind, leaveOut });
  },
  async save({ bytes }) {
    await openInHost(bytes);
    return 'The copy is open as a new workbook: save it under a name of its own, then hand that file on. This workbook is unchanged.';
  },
};
