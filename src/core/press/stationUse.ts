import { InputError } from '../inputError.js';
import type { Working } from '../working/working.js';
import { bySeverity, type Finding, type Verdict } from './finding.js';
import { pressSource } from './limit.js';

/**
 * What a share-of-rating function shows for a station's findings: the share, or the verdict word where a
 * size limit, a missing station or a blank limit stops the work. A press cell that cannot be read refuses.
 */
export function stationUse(findings: readonly Finding[], working?: Working): number | Verdict {
  const [worst] = [...findings].sort(bySeverity);
  if (worst?.verdict === 'Check input') {
    throw new InputError({
      code: 'invalid',
      argument: 'Press',
      received: '',
      problem: worst.note,
      allowed: '',
    });
  }
  const shares = findings.flatMap((finding) => finding.use ?? []);
  const stopped = worst !== undefined && worst.use === undefined;
  const shown = stopped || shares.length === 0 ? (worst?.verdict ?? 'Not checked') : Math.max(...shares);
  working?.step({
    title: 'Shown',
    formula: 'the share, or the word of the limit that stops the work',
    values: [],
    result: {
      symbol: 'use',
      meaning: 'share of rating',
      kind: typeof shown === 'number' ? 'ratio' : 'text',
      value: shown,
    },
    source: pressSource,
  });
  return shown;
}
