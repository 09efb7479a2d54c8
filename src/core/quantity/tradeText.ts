const fractionCharacters: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * Text as the trade types it, in one spelling: lower case, straight marks, `x` between dimensions, `-` for
 * every dash, fraction characters as ` 3/8`, single spaces. Each step is linear in the length of the text.
 */
export function tradeText(text: string): string {
  return text
    .replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (character) => ` ${fractionCharacters[character]}`)
    .replace(/[\u2018\u2019\u2032\u00B4`]/g, "'")
    .replace(/[\u201C\u201D\u2033]/g, '"')
    .replace(/''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[×✕⨯*]/g, 'x')
    .replace(/[\u00D8\u2300\u2205]/g, 'ø')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}
