import { otherGradeNames } from './gradeNames.js';

/** Marks of standards and products that may stand before a grade's name without changing it. */
const standardMark =
  /^(?:astm|aisi|sae|csa|din|uns|jis|gb|werkstoff|wnr|type|stainlesssteel|stainless|ss(?!400)|aluminium|aluminum|al|g4021m?|en10025[2-6]?|en1021[09]1?|en101492?|en100882?|en|a240m?|b209m?)/;

/** Toughness, steel making, use and delivery of structural steels: none changes the tensile strength. */
const structural =
  /^(s(?:235|275|355))(?:jr|j0|jo|j2|k2)(?:g[1-4])?(?:[hcw]|wp)?(?:n|ar|m)?(?:z(?:15|25|35))?$/;
const fineGrained = /^(s(?:355|420|460))(?:nl?|ml?)h?(?:z(?:15|25|35))?$/;
const quenched = /^(s(?:690|890|960))ql?1?$/;
const j0Only = /^(s450)j0(?:n|ar|m)?$/;

/** Letters and digits only, lower case: enough to compare names that were copied. */
export function plainKey(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}

const ownKeys = new Map<string, string>();
for (const [grade, names] of Object.entries(otherGradeNames))
  for (const name of names) {
    ownKeys.set(plainKey(name), plainKey(grade));
    ownKeys.set(withoutMarks(name), plainKey(grade));
  }

/**
 * The key of a grade as the trade writes it: `astm a572 gr 50`, `A572GR50` and `A572-50` are one grade, and so
 * are `S355J2+N`, `St52-3`, `1.0577` and `S355`. A delivery condition that changes the strength (`S355J2+C`) stays in
 * the key.
 */
export function gradeKey(name: string): string {
  const written = ownKeys.get(plainKey(name));
  if (written !== undefined) return written;
  const key = withoutMarks(name)
    .replace(structural, '$1')
    .replace(fineGrained, '$1')
    .replace(quenched, '$1')
    .replace(j0Only, '$1');
  return ownKeys.get(key) ?? key;
}

function withoutMarks(name: string): string {
  const lower = name.toLowerCase().replace(/\+ ?c(?![a-z])/, '+colddrawn');
  let key = plainKey(lower.replace(/ ?\/ ?a\d{2,3}m/, ''));
  for (let marks = 0; marks < 3; marks += 1) key = key.replace(standardMark, '');
  return key.replace(/^(a\d{2,3}m?)(?:grade|gr)(?=.)/, '$1').replace(/^(a\d{2,3})m/, '$1');
}
