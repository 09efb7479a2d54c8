import type { PressFinding } from '../check/finding.js';
import { bySeverity, hardestOf } from '../check/severity.js';
import type { Verdict } from '../check/verdict.js';
import type { Working } from '../working/working.js';
import { pressSource } from './limit.js';
import { refuseBadCell } from './refuseBadCell.js';

/**
 * What a share-of-rating function shows for a station's findings: the share, or the verdict word where a
 * size limit, a missing station or a blank limit stops the work. Work that is not for a press has no findings: Off
 * press. A press cell that cannot be read refuses.
 */
export function stationUse(findings: readonly PressFinding[], working?: Working): number | Verdict {
  const [worst] = [...findings].sort(bySeverity);
  refuseBadCell(worst);
  const shown = shownFor(findings, worst);
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

function shownFor(findings: readonly PressFinding[], worst: PressFinding | undefined): number | Verdict {
  if (worst === undefined) return 'Off press';
  const stops = worst.rule !== 'share' && worst.outcome !== 'held';
  const hardest = hardestOf(findings);
  return stops || hardest === undefined ? worst.verdict : hardest.use;
}
