import type { Finding } from '../../check/finding.js';
import type { RowFinding } from '../../check/rowFact.js';
import { mildestOf } from '../../check/severity.js';
import { cellOf, type Layout, type Layouts, optionsOf } from './layoutOf.js';

/**
 * The findings of a row that leaves choices: where it fails whichever is chosen, those of the choice with the mildest
 * word; what fails with some of them is open, with the cells that would settle it; what is open with any of them is open.
 */
export function jointFindings(
  { layouts, choices, more }: Layouts,
  findingsOf: (layout: Layout) => readonly RowFinding[],
): Finding[] {
  const [only] = layouts;
  if (layouts.length === 1 && only && !more) return [...findingsOf(only)];
  const worlds = layouts.map(findingsOf);
  const failing = worlds.map((found) => found.some(isFailed));
  const cells = choices.map(cellOf);
  const tooMany: Finding[] = more
    ? [{ rule: 'too many choices', outcome: 'open', verdict: 'OK so far', cells }]
    : [];
  if (!more && failing.every(Boolean)) return [...(mildestOf(worlds) ?? [])];
  const calm = worlds.find((_, at) => !failing[at]) ?? [];
  const open = worlds.flat().filter(({ outcome }) => outcome === 'open');
  const failed = worlds[failing.indexOf(true)]?.filter(isFailed) ?? [];
  const decisive = choices.filter((_, at) =>
    decides(
      at,
      choices.map(({ options }) => options),
      failing,
    ),
  );
  const choice: Finding[] =
    failed.length === 0
      ? []
      : [
          {
            rule: 'choice',
            outcome: 'open',
            verdict: 'OK so far',
            cells: (decisive.length > 0 ? decisive : choices).map(cellOf),
            failing: failed,
          },
        ];
  const settled = calm.filter(({ outcome }) => outcome !== 'open');
  return [...tooMany, ...choice, ...onceEach(open), ...settled];
}

function isFailed({ outcome }: RowFinding): boolean {
  return outcome === 'failed';
}

/** Whether two layouts that differ only in this choice end differently. */
function decides(at: number, sizes: readonly number[], failing: readonly boolean[]): boolean {
  const step = sizes.slice(0, at).reduce((product, size) => product * size, 1);
  return failing.some((fails, number) => {
    const option = optionsOf(number, sizes)[at] ?? 0;
    const other = failing[number + step];
    return option + 1 < (sizes[at] ?? 1) && other !== undefined && other !== fails;
  });
}

/** One of each open check, whichever choice it was met in. */
function onceEach(open: readonly RowFinding[]): RowFinding[] {
  const kept = new Map<string, RowFinding>();
  for (const finding of open) {
    const kind = finding.rule === 'distance' ? finding.kind : '';
    const other = finding.rule === 'distance' ? JSON.stringify(finding.between.map(({ is }) => is)) : '';
    const key = [
      finding.rule,
      kind,
      finding.group,
      other,
      JSON.stringify('missing' in finding ? finding.missing : []),
    ].join();
    if (!kept.has(key)) kept.set(key, finding);
  }
  return [...kept.values()];
}
