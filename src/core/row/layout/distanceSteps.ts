import type { Finding, FindingOf } from '../../check/finding.js';
import type { Range } from '../../check/range.js';
import type { NamedValue, Step } from '../../working/working.js';
import { holeTitle } from '../rowJob.js';

type Distance = FindingOf<'distance'>;

const practice = 'common practice, no source';

/** The steps of distances that were held against their limits, one for the worst of each kind. */
export function distanceSteps(findings: readonly Finding[]): Step[] {
  return findings.flatMap((finding) => {
    if (finding.rule === 'choice') return distanceSteps(finding.failing);
    return finding.rule === 'distance' ? [stepOf(finding)] : [];
  });
}

function stepOf(finding: Distance): Step {
  const { kind, from, given, limit, basis, verdict, group } = finding;
  const who = group === undefined ? '' : `${holeTitle(group)}: `;
  return {
    title: `${who}${kind}`,
    formula: 'e ≥ least',
    values: [
      ...rangeValues('e', `distance from the ${from}`, given),
      ...rangeValues('least', leastMeaning(finding), limit),
    ],
    result: { symbol: 'verdict', meaning: 'outcome of the check', kind: 'text', value: verdict },
    source: basis?.source ?? basis?.code ?? practice,
  };
}

function leastMeaning({ kind, basis }: Distance): string {
  if (!basis) return kind === 'heel' ? 'thickness beside it' : 'least by press practice';
  const of = [basis.code, basis.edge && `${basis.edge} edge`, basis.bolt && `bolt ${basis.bolt}`];
  return `least by ${of.filter(Boolean).join(', ')}`;
}

/** One value, or both ends of a range that the row leaves. */
function rangeValues(symbol: string, meaning: string, { least, most }: Range): NamedValue[] {
  if (least === most || !Number.isFinite(most)) return [{ symbol, meaning, kind: 'length', value: least }];
  return [
    { symbol: `${symbol} min`, meaning: `${meaning}, at the least`, kind: 'length', value: least },
    { symbol: `${symbol} max`, meaning: `${meaning}, at the most`, kind: 'length', value: most },
  ];
}
