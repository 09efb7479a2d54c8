import { styleIndex } from './styles.mjs';
import { address, escapeText, mainSpace, part, relationshipSpace } from './xml.mjs';

/** The shared strings of the workbook, in order of first use. */
export class SharedStrings {
  #index = new Map();
  #uses = 0;

  indexOf(text) {
    this.#uses += 1;
    if (!this.#index.has(text)) this.#index.set(text, this.#index.size);
    return this.#index.get(text);
  }

  part() {
    const items = [...this.#index.keys()].map((text) => {
      const space = text.trim() === text ? '' : ' xml:space="preserve"';
      return `<si><t${space}>${escapeText(text)}</t></si>`;
    });
    return part(
      `<sst xmlns="${mainSpace}" count="${this.#uses}" uniqueCount="${items.length}">${items.join('')}</sst>`,
    );
  }
}

/**
 * A worksheet under construction. A cell is `{ value, formula, spill, style }`: `spill` stores the formula in the
 * dynamic array form; a formula without a value waits for its first calculation.
 */
export class Sheet {
  #rows = new Map();
  tables = [];

  constructor(name, strings) {
    this.name = name;
    this.strings = strings;
  }

  set(column, row, cell) {
    if (!this.#rows.has(row)) this.#rows.set(row, new Map());
    this.#rows.get(row).set(column, cell);
  }

  setRow(row, cells, firstColumn = 1) {
    cells.forEach((cell, index) => this.set(firstColumn + index, row, cell));
  }

  part({ views, columns, after = '' }) {
    const rows = [...this.#rows.entries()].sort(([a], [b]) => a - b);
    const lastRow = rows.at(-1)[0];
    const lastColumn = Math.max(...rows.map(([, cells]) => Math.max(...cells.keys())));
    const widths = columns.map(
      (width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`,
    );
    const tableParts = this.tables.map((_, index) => `<tablePart r:id="rId${index + 1}"/>`).join('');
    return part(
      `<worksheet xmlns="${mainSpace}" xmlns:r="${relationshipSpace}">` +
        '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>' +
        `<dimension ref="A1:${address(lastColumn, lastRow)}"/>` +
        `<sheetViews>${views}</sheetViews><sheetFormatPr defaultRowHeight="13.5"/>` +
        `<cols>${widths.join('')}</cols>` +
        `<sheetData>${rows.map(([row, cells]) => this.#row(row, cells)).join('')}</sheetData>` +
        after +
        (tableParts && `<tableParts count="${this.tables.length}">${tableParts}</tableParts>`) +
        '</worksheet>',
    );
  }

  #row(row, cells) {
    const inOrder = [...cells.entries()].sort(([a], [b]) => a - b);
    return `<row r="${row}">${inOrder.map(([column, cell]) => this.#cell(address(column, row), cell)).join('')}</row>`;
  }

  #cell(at, { value, formula, spill = false, style }) {
    const index = styleIndex(style);
    const open = `<c r="${at}"${index === 0 ? '' : ` s="${index}"`}`;
    if (formula === undefined) {
      if (value === undefined) return index === 0 ? '' : `${open}/>`;
      if (typeof value === 'number') return `${open}><v>${value}</v></c>`;
      return `${open} t="s"><v>${this.strings.indexOf(value)}</v></c>`;
    }
    const stored = spill
      ? `<f t="array" ref="${at}">${escapeText(formula)}</f>`
      : `<f>${escapeText(formula)}</f>`;
    const cached = value === undefined ? '' : `<v>${escapeText(value)}</v>`;
    const type = typeof value === 'string' ? ' t="str"' : '';
    return `${open}${type}${spill ? ' cm="1"' : ''}>${stored}${cached}</c>`;
  }
}

/** Page settings every sheet shares: landscape, one page wide. */
export const pageSettings =
  '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>' +
  '<pageSetup orientation="landscape" fitToHeight="0"/>';
