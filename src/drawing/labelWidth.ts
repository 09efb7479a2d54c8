/** Of the widest letters used; the font is the host's. */
const widthPerLetter = 7.2;
const padding = 10;

/** Room in pixels for a label with a little space around it. */
export function labelWidth(text: string): number {
  return text.length * widthPerLetter + padding;
}
