import { describe } from 'vitest';
import { changesContract } from './changes.js';
import { hostileContract } from './hostile.js';
import { mergingContract } from './merging.js';
import { readingContract } from './reading.js';
import { revertContract } from './revert.js';
import type { Open } from './underTest.js';
import { writingContract } from './writing.js';

/** What every implementation of the port must do. */
export function workbookContract(name: string, open: Open): void {
  describe(name, () => {
    readingContract(open);
    writingContract(open);
    mergingContract(open);
    revertContract(open);
    hostileContract(open);
    changesContract(open);
  });
}
