import type { OpenCell } from './rowFact.js';
import type { Finding } from './finding.js';

/**
 * Equal for findings of two rows that say the same whatever the sizes: the same rule and kind, checked against the same
 * limit of the same press, with the same cells missing. Cells that cannot be read are the same where they hold the same.
 */
export function reasonKey(finding: Finding): string {
  const { rule, outcome, verdict, press, station } = finding;
  return JSON.stringify([verdict, rule, outcome, press, station, factsOf(finding)]);
}

function factsOf(finding: Finding): unknown {
  switch (finding.rule) {
    case 'refusal': {
      const { cause, code, argument, received } = finding.failure;
      return cause ?? [code, argument, received];
    }
    case 'station':
      return [finding.needed, finding.ofAll];
    case 'press limit':
      return [finding.item, finding.sized.is, finding.limit];
    case 'blank item':
      return finding.item;
    case 'shear minimum':
      return [finding.item, finding.limit];
    case 'smallest hole':
    case 'widest bar':
      return finding.limit;
    case 'blade material':
      return [finding.grade, finding.limit];
    case 'share':
      return finding.operation;
    case 'nothing stated':
      return finding.of;
    case 'miter':
      return finding.why === 'one hand only'
        ? [finding.on, finding.why, finding.needs]
        : [finding.on, finding.why];
    case 'vee opening':
      return [finding.wantedMm, finding.exact];
    case 'narrowest notch':
      return finding.limit;
    case 'leg beside punch':
      return finding.halfMm;
    case 'notch bites':
      return finding.failure.argument;
    case 'die holder':
      return [finding.beside, finding.limit];
    case 'distance':
      return [finding.kind, finding.limit, finding.basis, cellsOf(finding.missing)];
    case 'press not known':
      return finding.name;
    case 'work without part':
      return finding.text;
    case 'bolt in hole':
      return [finding.holeMm, finding.bolt];
    case 'hole off the part':
      return finding.correct;
    case 'outline':
      return finding.problem.problem;
    case 'work on the part':
      return [finding.cell, finding.along];
    case 'choice':
    case 'too many choices':
      return cellsOf(finding.cells);
    case 'blank cell':
      return [cellsOf([finding.cell]), finding.unchecked, finding.item];
    case 'reach open':
      return [finding.item, finding.limit, cellsOf(finding.missing)];
    case 'station for work':
      return finding.work;
    case 'tool on hand':
      return [finding.lacking, finding.hole, finding.openingMm];
    default:
      return null;
  }
}

function cellsOf(cells: readonly OpenCell[]): unknown {
  return cells.map(({ cell, group }) => [cell, group ?? 0]);
}
