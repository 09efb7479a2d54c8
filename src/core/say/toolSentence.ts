import type { FindingOf } from '../check/finding.js';
import type { NearTool, ToolOver } from '../check/rowFact.js';
import type { LengthUnit } from '../quantity/units.js';
import { describeHole } from '../tooling/hole.js';
import { size } from './sizes.js';

/** Which tool is lacking on a press, what is needed, and what comes nearest. */
export function toolSentence(finding: FindingOf<'tool on hand'>, unit: LengthUnit): string {
  const { lacking, hole, press = 'the press', openingMm, unread, over } = finding;
  const words = describeHole(hole, unit);
  const more = unread > 0 ? ` ${unread} rows of the Tools table could not be read.` : '';
  if (over) return `punch ${words} does not ${overWords(over, press, unit)}.${more}`;
  const near = nearWords(finding.nearest, unit);
  if (lacking === 'punch') return `no punch ${words} for ${press}; ${near}.${more}`;
  const opening = openingMm === undefined ? '' : `: opening ${size(openingMm, unit)} is needed`;
  return `no die for punch ${words} on ${press}${opening}; ${near}.${more}`;
}

function overWords({ why, sizeMm, limitMm }: ToolOver, press: string, unit: LengthUnit): string {
  const [given, limit] = [size(sizeMm, unit), size(limitMm, unit)];
  switch (why) {
    case 'punch over its body':
      return `go into ${press}: it measures ${given}, over its body of ${limit}`;
    case 'punch over the station':
      return `go into ${press}: it measures ${given}, over the largest body the station takes, ${limit}`;
    case 'body over the station':
      return `go into ${press}: its body is ${given}, over the largest the station takes, ${limit}`;
    case 'no room over the work':
      return `clear the work on ${press}: at the top of the stroke it stands ${given} over the die, and work and gap need ${limit}. Use a shorter punch`;
    case 'ends above the stop':
      return `reach the die on ${press}: it must travel ${given}, and the stroke is ${limit}. Use a longer punch`;
  }
}

function nearWords(tools: readonly NearTool[], unit: LengthUnit): string {
  if (tools.length === 0) return 'none of that shape is on hand';
  const names = tools.map((tool) => ('written' in tool ? tool.written : describeHole(tool.size, unit)));
  return `nearest on hand: ${names.join(', ')}`;
}
