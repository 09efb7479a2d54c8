import { InputError } from '../inputError.js';
import { bySeverity, type Finding, type Verdict } from './finding.js';

/**
 * What a share-of-rating function shows for a station's findings: the share, or the verdict word where a
 * size limit, a missing station or a blank limit stops the work. A press cell that cannot be read refuses.
 */
export function stationUse(findings: readonly Finding[]): number | Verdict {
  const [worst] = [...findings].sort(bySeverity);
  if (!worst) return 'Not checked';
  if (worst.verdict === 'Check input') {
    throw new InputError({
      code: 'invalid',
      argument: 'Press',
      received: '',
      problem: worst.note,
      allowed: '',
    });
  }
  const shares = findings.flatMap((finding) => finding.use ?? []);
  const stopped = findings.find((finding) => finding === worst && finding.use === undefined);
  return stopped || shares.length === 0 ? worst.verdict : Math.max(...shares);
}
