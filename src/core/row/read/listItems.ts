/** The items of a list in one cell, and how else its only comma may be read. */
export interface ListItems {
  items: string[];
  /** Where the only comma may be a decimal comma or part two items, as in `70,5`: those two. */
  parted?: string[];
}

const digitComma = /\d,\d/g;
/** `3+`: what was to follow is not there. */
const isCutOff = /^[\s;]*(?:[+&,]|and\b)|(?:[+&,]|\band)[\s;]*$/;

/**
 * Parts a list at semicolons, `&`, `+`, `and`, line breaks, and commas. A comma between two digits without a space is a
 * decimal comma where the list has other separators (`12,5; 14`) and parts items where it cannot be one (`3,4,3`); alone
 * it may be either. One that begins or ends with such a sign is left whole, so that nothing reads it. Common practice, no source.
 */
export function listItems(text: string): ListItems {
  if (isCutOff.test(text)) return { items: [text.trim()] };
  const items = text
    .split(/[;&+\n]|\band\b|,(?!\d)|(?<!\d),/)
    .map((item) => item.trim())
    .filter((item) => item !== '');
  const [only = '', ...others] = items;
  const commas = only.match(digitComma)?.length ?? 0;
  if (others.length > 0 || commas === 0) return { items };
  const parted = only.split(',').map((item) => item.trim());
  return parted.length > 2 ? { items: parted } : { items, parted };
}

/** The unit behind the last of several sizes holds for all where no other has one: `70, 80, 70 mm`. */
export function withLastUnit(sizes: readonly string[]): string[] {
  const unit = /(?:mm|cm|inches|inch|in\.?|")$/.exec(sizes.at(-1) ?? '')?.[0];
  if (unit === undefined || sizes.slice(0, -1).some((size) => /[a-z"']/.test(size))) return [...sizes];
  return sizes.map((size, at) => (at === sizes.length - 1 ? size : `${size} ${unit}`));
}
