import type { Finding, FindingOf } from '../../check/finding.js';
import type { Range } from '../../check/range.js';
import type { DistanceKind } from '../../check/rowFact.js';
import { bySeverity } from '../../check/severity.js';
import type { NamedValue, Working } from '../../working/working.js';
import { holeTitle } from '../job/rowJob.js';

type Distance = FindingOf<'distance'>;

const titles: Record<DistanceKind, string> = {
  'edge by code': 'edge distance by code',
  'edge by practice': 'steel left at the edge',
  heel: 'steel beside what stands up',
  'spacing by code': 'spacing by code',
  'clear distance by code': 'clear distance by code',
  'spacing by practice': 'steel left between holes',
  'hole to bend': 'hole to bend',
  flange: 'flange',
  'between cuts': 'steel between cuts',
};

/** Reports the distances that were checked against their limits, the worst of each kind, worst first. */
export function distanceSteps(findings: readonly Finding[], working: Working | undefined): void {
  if (!working) return;
  for (const finding of [...findings].sort(bySeverity)) {
    if (finding.rule === 'choice') distanceSteps(finding.failing, working);
    if (finding.rule === 'distance') distanceStep(finding, working);
  }
}

function distanceStep(finding: Distance, working: Working): void {
  const { kind, from, given, limit, basis, verdict, group } = finding;
  const who = group === undefined ? 'Bend' : holeTitle(group);
  const bolt: NamedValue[] = basis?.bolt
    ? [{ symbol: 'bolt', meaning: 'bolt', kind: 'text', value: basis.bolt }]
    : [];
  working.step({
    title: `${who}: ${titles[kind]}`,
    formula: 'e ≥ limit',
    values: [
      ...rangeValues('e', `distance from the ${from}`, given),
      ...rangeValues('limit', basis?.edge ? `smallest at a ${basis.edge} edge` : 'smallest allowed', limit),
      ...bolt,
    ],
    result: { symbol: 'verdict', meaning: 'outcome of the check', kind: 'text', value: verdict },
    source: sourceOf(finding),
  });
}

function sourceOf({ kind, basis }: Distance): string {
  if (kind === 'heel') return 'geometry';
  return basis?.source ?? basis?.code ?? 'common practice, no source';
}

/** One value, or both ends of a range that the row or the code leaves. */
function rangeValues(symbol: string, meaning: string, { least, most }: Range): NamedValue[] {
  const value = (at: string, mm: number): NamedValue => ({
    symbol: at === '' ? symbol : `${symbol} ${at}`,
    meaning,
    kind: 'length',
    value: mm,
  });
  if (least === most || !Number.isFinite(most)) return [value('', least)];
  return [value('lowest', least), value('highest', most)];
}
