import { refuse, refuseUnknown } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { mmPerInch } from '../quantity/units.js';
import { readTrailingLength, type SectionSource } from './dimension.js';
import type { AnySection, SectionText } from './section.js';
import { wordTable } from '../quantity/wordTable.js';

type Weight = 'STD' | 'XS' | 'XXS';

/** Nominal size, outside diameter and walls, in. */
interface PipeRow {
  nominal: string;
  outsideIn: number;
  walls: Partial<Record<Weight, number>>;
}

/**
 * Source: AISC Shapes Database 15.0, as in the open repository buddyd16/Structural-Engineering; 1/4 and 3/8: ASME
 * B36.10 (from memory).
 */
// prettier-ignore
const pipes: readonly PipeRow[] = [
  { nominal: '1/4', outsideIn: 0.54, walls: { STD: 0.088, XS: 0.119 } },
  { nominal: '3/8', outsideIn: 0.675, walls: { STD: 0.091, XS: 0.126 } },
  { nominal: '1/2', outsideIn: 0.84, walls: { STD: 0.109, XS: 0.147 } },
  { nominal: '3/4', outsideIn: 1.05, walls: { STD: 0.113, XS: 0.154 } },
  { nominal: '1', outsideIn: 1.315, walls: { STD: 0.133, XS: 0.179 } },
  { nominal: '1-1/4', outsideIn: 1.66, walls: { STD: 0.14, XS: 0.191 } },
  { nominal: '1-1/2', outsideIn: 1.9, walls: { STD: 0.145, XS: 0.2 } },
  { nominal: '2', outsideIn: 2.375, walls: { STD: 0.154, XS: 0.218, XXS: 0.436 } },
  { nominal: '2-1/2', outsideIn: 2.875, walls: { STD: 0.203, XS: 0.276, XXS: 0.552 } },
  { nominal: '3', outsideIn: 3.5, walls: { STD: 0.216, XS: 0.3, XXS: 0.6 } },
  { nominal: '3-1/2', outsideIn: 4, walls: { STD: 0.226, XS: 0.318 } },
  { nominal: '4', outsideIn: 4.5, walls: { STD: 0.237, XS: 0.337, XXS: 0.674 } },
  { nominal: '5', outsideIn: 5.563, walls: { STD: 0.258, XS: 0.375, XXS: 0.75 } },
  { nominal: '6', outsideIn: 6.625, walls: { STD: 0.28, XS: 0.432, XXS: 0.864 } },
  { nominal: '8', outsideIn: 8.625, walls: { STD: 0.322, XS: 0.5, XXS: 0.875 } },
  { nominal: '10', outsideIn: 10.75, walls: { STD: 0.365, XS: 0.5, XXS: 1 } },
  { nominal: '12', outsideIn: 12.75, walls: { STD: 0.375, XS: 0.5, XXS: 1 } },
  { nominal: '14', outsideIn: 14, walls: { STD: 0.375, XS: 0.5 } },
  { nominal: '16', outsideIn: 16, walls: { STD: 0.375, XS: 0.5 } },
  { nominal: '18', outsideIn: 18, walls: { STD: 0.375, XS: 0.5 } },
  { nominal: '20', outsideIn: 20, walls: { STD: 0.375, XS: 0.5 } },
  { nominal: '24', outsideIn: 24, walls: { STD: 0.375, XS: 0.5 } },
];

/** Up to these outside diameters a schedule is the wall of a weight. */
const schedules: Readonly<Record<string, { weight: Weight; toOutsideIn: number }>> = wordTable({
  40: { weight: 'STD', toOutsideIn: 10.75 },
  80: { weight: 'XS', toOutsideIn: 8.625 },
});
const weights: Readonly<Record<string, Weight>> = wordTable({
  ...{
    std: 'STD',
    standard: 'STD',
    xs: 'XS',
    xh: 'XS',
    'x-strong': 'XS',
    'x strong': 'XS',
    'xx-strong': 'XXS',
  },
  ...{ xxs: 'XXS', xxh: 'XXS', 'extra strong': 'XS', 'xx strong': 'XXS', 'double extra strong': 'XXS' },
});
const weightWords = Object.keys(weights)
  .sort((a, b) => b.length - a.length)
  .join('|');
const sizePattern = '(\\d{1,2}(?:[ -]\\d/\\d)?|\\d/\\d)(?: ?(?:"|in\\.?))?';
const wall = `(${weightWords}|sch(?:edule|ed)?\\.? ?\\d{1,3}s?)`;
const wordFirst = new RegExp(`^pipe ?-? ?${sizePattern} ?(?:dia\\.? ?)?${wall}(?: ?x ?(.+))?$`);
const wordLast = new RegExp(`^${sizePattern} ?(?:dia\\.? ?)?${wall}\\.? ?pipe(?: ?x ?(.+))?$`);
const noWall = /^(?:pipe[\d/ -]+|[\d/ -]+pipe)$/;

/**
 * A pipe by its nominal size and weight, `PIPE 1-1/2 STD`, `2" SCH 40 PIPE`; undefined for text that is none. A pipe
 * without its wall is refused.
 */
export function readPipe(text: string, source: SectionSource): SectionText<AnySection> | undefined {
  if (!text.includes('pipe')) return undefined;
  if (noWall.test(text.replace(/"| in\b/g, ''))) {
    const problem = `${quoted(source.text)} lacks the wall of the pipe.`;
    return refuse(source.argument, source.text, problem, 'Write PIPE 2 STD, PIPE 2 XS or PIPE 2 SCH 40.');
  }
  const [, nominal, weight, trailing] = wordFirst.exec(text) ?? wordLast.exec(text) ?? [];
  if (nominal === undefined || weight === undefined) return undefined;
  const name = nominal.replace(' ', '-');
  const row = pipes.find((each) => each.nominal === name);
  const asWeight = row && weightOf(weight, row);
  const wallIn = asWeight && row.walls[asWeight];
  if (!row || asWeight === undefined || wallIn === undefined) return unknownPipe(source);
  const section = {
    kind: 'round tube',
    designation: `PIPE${name}${asWeight}`,
    diameterMm: row.outsideIn * mmPerInch,
    thicknessMm: wallIn * mmPerInch,
  } as const;
  return trailing === undefined ? { section } : { section, lengthMm: readTrailingLength(trailing, source) };
}

function weightOf(text: string, row: PipeRow): Weight | undefined {
  const schedule = /^sch\D*(\d+)$/.exec(text)?.[1];
  if (schedule === undefined) return weights[text];
  const known = schedules[schedule];
  return known && row.outsideIn <= known.toOutsideIn ? known.weight : undefined;
}

function unknownPipe({ argument, text }: SectionSource): never {
  const fix =
    'Sizes from 1/4 to 24 in STD or XS, some XXS. Or write outside diameter and wall: PIPE 2.375X0.154.';
  return refuseUnknown(argument, text, `${quoted(text)} is not a pipe in the table.`, fix);
}
