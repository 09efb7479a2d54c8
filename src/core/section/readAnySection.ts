import { refuse } from '../inputError.js';
import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { memo } from '../quantity/memo.js';
import { tradeText } from '../quantity/tradeText.js';
import type { LengthUnit } from '../quantity/units.js';
import { notASection, sectionExamples, type SectionSource } from './dimension.js';
import { plainSizes } from './plainSizes.js';
import { readAngleSection } from './readAngleSection.js';
import { isMarkedTube, readBar } from './readBar.js';
import { readBeam } from './readBeam.js';
import { readChannel } from './readChannel.js';
import { readFlat } from './readFlat.js';
import { readPipe } from './readPipe.js';
import { readTee } from './readTee.js';
import { readTube } from './readTube.js';
import type { AnySection, SectionText } from './section.js';
import { type Family, sectionWords } from './sectionWords.js';

const remembered = memo<SectionText<AnySection>>();
const longestText = 200;

/** `10 GA`: a number of a gauge, of which there are several, none of them a size. */
const gaugeNumber = /\d ?(?:ga|gage|gauge)\b|\b(?:ga|gage|gauge)\.? ?\d|#\d/;

const countedSection =
  /^(?:\((\d{1,3})\) ?|(\d{1,3})(?: ?(?:pcs?|ea|[x-]))? ?)((?:pl|fb|fl|[lcw]|mc|hss|upn|u|rd|bl|flb|hea|heb|ipe|(?<!\d)u[bc]|chs|rhs|shs)\.? ?\d.*)$/;

/**
 * Reads a section as the trade writes it: `PL1/2X6`, `FB 10x50` or `1/2x4` (flat), `L3X3X1/4`, `L80x80x8`,
 * `C8X11.5`, `UPN100`, `RB 1`, `SQ 3/4`, `HSS4X4X1/4`, `RHS100x50x5`, `PIPE 2 STD`, `T3X3X3/8`, `W12X26`, `HEA160`, `UB 203x133x25`, each
 * with a trailing length if there is one (`PL1/2X6X1'-0`). The word of plates, bars and angles may stand behind a size (`3/8 PL X 6`,
 * `1 SQ BAR`); `HR` before it and `LLV` behind an angle are left aside.
 *
 * @param value the cell
 * @param argument what the cell is, for the refusal
 * @param unit the shop's unit, for numbers without one; fractions and inch marks mean inches whatever the shop
 * @returns the section, and the length in mm where one trails
 * Throws `invalid` for text that is no section, a dimension no section has, and families that are not read
 * ; `unknown` for a channel, beam or pipe that is
 * in no table.
 * @example readAnySection("PL1/2X6X1'-0", 'Section', 'in').lengthMm // 304.8
 * Source: designations as in AISC's naming convention for shapes; the rest is common practice, no source.
 */
export function readAnySection(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
): SectionText<AnySection> {
  const source = { text: String(value ?? ''), argument, unit };
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', sectionExamples(unit));
  if (typeof value !== 'string' || value.length > longestText) return notASection(source);
  return remembered(`${unit}|${argument}|${value}`, () => parse(source));
}

function parse(source: SectionSource): SectionText<AnySection> {
  const typed = tradeText(source.text);
  const inMm = /\d ?mm/.test(typed) || (source.unit === 'mm' && !/["']|\d ?(?:in|ft)\b/.test(typed));
  const text = plainSizes(typed, inMm);
  if (gaugeNumber.test(text)) return notAThickness(source);
  refuseCount(text, source);
  const pipe = readPipe(text, source);
  if (pipe) return pipe;
  const { family, word, parts, ignored } = sectionWords(text);
  const read = readFamily(family, word, parts, source, text);
  // Nobody leaves the zero away in mm: a digit was lost.
  if (inMm && /(?<!\d)[.,]\d/.test(text)) notASection(source);
  return ignored.length === 0 ? read : { ...read, ignored };
}

function readFamily(
  family: Family | undefined,
  word: string,
  parts: string[],
  source: SectionSource,
  text: string,
): SectionText<AnySection> {
  switch (family) {
    case 'plate':
      return readFlat(parts, 'plate', source);
    case 'bar':
      return readFlat(parts, 'bar', source);
    case 'angle':
      return readAngleSection(parts, source);
    case 'round':
      return text.startsWith('ø') && isMarkedTube(parts, source)
        ? readTube('chs', parts, source)
        : readBar(parts, 'round', source);
    case 'square':
      return readBar(parts, 'square', source);
    case 'channel':
      return readChannel(word, parts, source);
    case 'tube':
      return readTube(word, parts, source);
    case 'tee':
      return readTee(parts, source);
    case 'beam':
      return readBeam(word, parts, source);
    case 'other':
      return notChecked(source);
    default:
      return notASection(source);
  }
}

/** `2 L3X3X1/4`: two pieces, or a double angle; the count belongs under its own heading. */
function refuseCount(text: string, { argument, text: typed }: SectionSource): void {
  const [, bracketed, count = bracketed, section = ''] = countedSection.exec(text) ?? [];
  if (count === undefined) return;
  const problem = section.startsWith('l')
    ? `${quoted(typed)} may be a double angle or ${count} pieces.`
    : `${quoted(typed)} has a count in front.`;
  refuse(argument, typed, problem, `Write ${section.toUpperCase()}, and ${count} under Qty.`);
}

function notAThickness({ argument, text }: SectionSource): never {
  const problem = `${quoted(text)} gives its thickness as a gauge number.`;
  return refuse(argument, text, problem, 'Write the thickness in inches or mm: PL1/8X6 or PL 3x150 mm.');
}

function notChecked({ argument, text }: SectionSource): never {
  const problem = `${quoted(text)} is not among the sections read: plate, flat, angle, channel, round, square, tube, tee, beam.`;
  return refuse(
    argument,
    text,
    problem,
    'Leave it out of the list, or give the part that is punched or sheared.',
  );
}
