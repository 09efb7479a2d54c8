export const mainSpace = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const relationshipSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const packageSpace = 'http://schemas.openxmlformats.org/package/2006/relationships';

const characters = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text between tags. */
export const escapeText = (text) => String(text).replace(/[&<>]/g, (character) => characters[character]);
/** The value of an attribute. */
export const escapeAttribute = (text) =>
  String(text).replace(/[&<>"]/g, (character) => characters[character]);

/** A part with its declaration. */
export const part = (body) => `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${body}`;

/** The address of a cell, both counted from 1: `(2, 5)` is `B5`. */
export function address(column, row) {
  return `${columnName(column)}${row}`;
}

export function columnName(column) {
  const before = Math.floor((column - 1) / 26);
  return (before > 0 ? columnName(before) : '') + String.fromCharCode(65 + ((column - 1) % 26));
}
