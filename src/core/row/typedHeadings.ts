import type { Finding } from '../check/finding.js';
import type { OpenCell } from '../check/rowFact.js';
import { groupFields, rowFields } from './headings/heading.js';
import type { Column, Headings } from './headings/readHeadings.js';

type Names = ReadonlyMap<string, string>;
const remembered = new WeakMap<Headings, Names>();

/** Findings whose cells have the headings as they stand in the list, so that a sentence names what the reader sees. */
export function withTypedHeadings(findings: readonly Finding[], headings: Headings): readonly Finding[] {
  const names = remembered.get(headings) ?? namesOf(headings);
  remembered.set(headings, names);
  if (names.size === 0) return findings;
  return findings.map((finding) => (finding.outcome === 'held' ? finding : named(finding, names)));
}

/** The headings that are not the name of their column, by that name. */
function namesOf({ fields, groups }: Headings): Names {
  const names = new Map<string, string>();
  const put = (name: string, column: Column | undefined) => {
    if (column && column.heading !== name) names.set(name, column.heading);
  };
  for (const { key, name } of rowFields) put(name, fields[key]);
  groups.forEach((columns, group) => {
    for (const { key, name } of groupFields) put(keyOf({ cell: name, group }), columns[key]);
  });
  return names;
}

function keyOf({ cell, group = 0 }: OpenCell): string {
  return group === 0 ? cell : `${cell} ${group + 1}`;
}

function named(finding: Finding, names: Names): Finding {
  const cell = (each: OpenCell): OpenCell => {
    const heading = names.get(keyOf(each));
    return heading === undefined ? each : { ...each, heading };
  };
  switch (finding.rule) {
    case 'distance':
    case 'reach open':
      return finding.missing.length === 0 ? finding : { ...finding, missing: finding.missing.map(cell) };
    case 'choice': {
      const failing = finding.failing.map((each) => named(each, names));
      return { ...finding, cells: finding.cells.map(cell), failing };
    }
    case 'too many choices':
      return { ...finding, cells: finding.cells.map(cell) };
    case 'blank cell':
      return { ...finding, cell: cell(finding.cell) };
    case 'hole off the part':
      return { ...finding, correct: finding.correct.map(cell) };
    default:
      return finding;
  }
}
