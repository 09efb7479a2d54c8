import type { CopyKind, CopyMaker } from '../../taskpane/handOff/copyMaker.js';
import { valuesCopy } from '../../xlsx/freeze/valuesCopy.js';

/** The open workbook as a file. */
export interface OpenFile {
  name: string;
  bytes: Uint8Array;
}

/** Lets the pane make values copies of the open workbook, and give them to the user as files. */
export function offerCopies(file: () => OpenFile, give: (copy: OpenFile) => void): void {
  const tonrowCopies: CopyMaker = {
    make: async (kind, leaveOut = []) => valuesCopy(file().bytes, { kind, leaveOut }),
    save: async ({ bytes }, kind) => {
      give({ name: copyName(file().name, kind), bytes });
      return 'The copy is saved. This workbook is unchanged.';
    },
  };
  Object.assign(globalThis, { tonrowCopies });
}

const copyName = (name: string, kind: CopyKind) => name.replace(/(?=\.[^.]+$|$)/, ` ${kind} copy`);
