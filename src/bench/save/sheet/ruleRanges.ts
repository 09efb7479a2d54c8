import { parseZone, zoneAddress, type Zone } from '../../../sheet/address.js';
import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { ruleId, type RuleRanges } from '../../open/ruleRanges.js';
import { childElements } from '../parts/childElements.js';
import { movedZone, type SheetMove } from '../headers/sheetMoves.js';

/** A sheet's part whose colour rules are about the cells that they are about in the grid. */
export function withRuleRanges(
  xml: string,
  now: RuleRanges,
  given: RuleRanges,
  move: SheetMove | undefined,
): string {
  const edits: TextEdit[] = [];
  const reader = new XmlReader(xml);
  let number = 0;
  while (reader.next()) {
    if (reader.name === 'sheetData' && !reader.closing) reader.skipElement();
    if (reader.closing || reader.name !== 'conditionalFormatting') continue;
    const bounds = reader.attributeBounds('sqref');
    const start = reader.tagStart;
    reader.skipElement();
    const rules = childElements(xml.slice(start, reader.position)).filter(({ name }) => name === 'cfRule');
    const known = rules.filter(({ text }) => /^[^>]*\stype\s*=\s*["']expression["']/.test(text));
    const ids = known.map(() => ruleId(number++));
    // Rules the grid does not know, or rules that went different ways, stay where they are.
    if (!bounds || known.length < rules.length || !ids.some((id) => given.has(id))) continue;
    const ranges = new Set(ids.map((id) => sorted(now.get(id) ?? [])));
    const [text = ''] = ranges;
    if (ranges.size > 1 || ids.every((id) => text === sorted(moved(given.get(id) ?? [], move)))) continue;
    if (text === '') edits.push({ start, end: reader.position, text });
    else edits.push({ ...bounds, text });
  }
  return applyEdits(xml, edits);
}

function moved(ranges: readonly string[], move: SheetMove | undefined): string[] {
  return ranges.flatMap((range) => {
    const zone = parseZone(range);
    const left: Zone | undefined = zone && (move ? movedZone(zone, move) : zone);
    return left ? [zoneAddress(left)] : [];
  });
}

const sorted = (ranges: readonly string[]): string => [...ranges].sort().join(' ');
