import { address, escapeAttribute, escapeText, mainSpace, part } from './xml.mjs';

/**
 * Writes a table's cells into a sheet and adds its part. `columns` are `{ name, style, formula }`; a formula makes a
 * calculated column.
 */
export function addTable(sheet, { id, name, column, row, columns, rows }) {
  sheet.setRow(
    row,
    columns.map(({ name: heading }) => ({ value: heading, style: 'heading' })),
    column,
  );
  rows.forEach((cells, index) => sheet.setRow(row + 1 + index, cells, column));
  const ref = `${address(column, row)}:${address(column + columns.length - 1, row + rows.length)}`;
  sheet.tables.push({ id, xml: tablePart({ id, name, ref, columns }) });
  return ref;
}

function tablePart({ id, name, ref, columns }) {
  const entries = columns.map(({ name: heading, formula }, index) => {
    const open = `<tableColumn id="${index + 1}" name="${escapeAttribute(heading)}"`;
    return formula
      ? `${open}><calculatedColumnFormula>${escapeText(formula)}</calculatedColumnFormula></tableColumn>`
      : `${open}/>`;
  });
  return part(
    `<table xmlns="${mainSpace}" id="${id}" name="${name}" displayName="${name}" ref="${ref}" totalsRowShown="0">` +
      `<autoFilter ref="${ref}"/>` +
      `<tableColumns count="${columns.length}">${entries.join('')}</tableColumns>` +
      '<tableStyleInfo name="TableStyleLight9" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>' +
      '</table>',
  );
}
