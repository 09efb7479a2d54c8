/*
 * Characters that show nothing: soft hyphen, zero width spaces and joiners, direction marks, variation selectors, the
 * byte order mark. They come with texts that were copied from web pages, mails and other programs.
 */
const anyInvisible = /\p{Default_Ignorable_Code_Point}/u;
const eachInvisible = /\p{Default_Ignorable_Code_Point}/gu;
const outsideNumbers = /(?<!\d)\p{Default_Ignorable_Code_Point}+|\p{Default_Ignorable_Code_Point}+(?!\d)/gu;

/**
 * The text without what cannot be seen. Between two digits it stays, for it may stand where a dash or a space was
 * lost: no reader knows it there, and its refusal names it.
 */
export function visibleText(text: string): string {
  return anyInvisible.test(text) ? text.replace(outsideNumbers, '') : text;
}

/** The text with its invisible characters by their codes: `1[U+200B]3/16`. */
export function markedInvisible(text: string): string {
  if (!anyInvisible.test(text)) return text;
  return text.replace(eachInvisible, (character) => {
    const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    return `[U+${code}]`;
  });
}
