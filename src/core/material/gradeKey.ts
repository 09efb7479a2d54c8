/** Marks of standards and products that may stand before a grade's name without changing it. */
const standardMark =
  /^(?:astm|aisi|sae|csa|din|uns|type|stainlesssteel|stainless|ss|aluminium|aluminum|al|g4021m?|en10025[2-6]?|en|a240m?|b209m?)/;

/** Other names of the grades in the table, by key. */
const otherNames = new Map<string, string>([
  ['mildsteel', 'mild'],
  ['ms', 'mild'],
  ['a572345', 'a57250'],
  ['a529345', 'a52950'],
  ['44w', '300w'],
  ['50w', '350w'],
  ['300w44w', '300w'],
  ['350w50w', '350w'],
  ['c260', 'brassc260'],
  ['brassc260halfhard', 'brassc260'],
  ['c110', 'copperc110'],
  ['copperc110halfhard', 'copperc110'],
]);

/** Letters and digits only, lower case: enough to compare names that were copied. */
export function plainKey(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
}

/**
 * The key of a grade as the trade writes it: `astm a572 gr 50`, `A572GR50` and `A572-50` are one grade, and so
 * are `S355J2+N` and `S355`. A delivery condition that changes the strength (`S355J2+C`) stays in the key.
 */
export function gradeKey(name: string): string {
  let key = plainKey(name.toLowerCase().replace(/ ?\/ ?a\d{2,3}m/, ''));
  for (let marks = 0; marks < 3; marks += 1) key = key.replace(standardMark, '');
  key = key.replace(/^(a\d{2,3}m?)(?:grade|gr)/, '$1').replace(/^(a\d{2,3})m/, '$1');
  key = key
    .replace(/^(s(?:235|275|355))(?:jr|j0|j2|k2)(?:n|ar|m)?$/, '$1')
    .replace(/^(s460)(?:nl?|ml?)$/, '$1');
  return otherNames.get(key) ?? key;
}
