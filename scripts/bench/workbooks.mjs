// Two workbooks with the same parts and the same six numbers in every row: one by our functions, one by native
// formulas as an estimator would write them by hand.
import { strToU8, zipSync } from 'fflate';

const header = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelationships = 'http://schemas.openxmlformats.org/package/2006/relationships';
const contentTypes = 'http://schemas.openxmlformats.org/package/2006/content-types';

const holes = [9 / 16, 11 / 16, 13 / 16, 15 / 16, 1 + 1 / 16];
const thicknesses = [1 / 4, 5 / 16, 3 / 8, 1 / 2];
const widths = [2, 2.5, 3, 4, 6];
const bolts = [1 / 2, 5 / 8, 3 / 4, 7 / 8, 1];

/** Column letters of the inputs: hole, thickness, width, bolt, length; then the six formulas. */
const ours = [
  (row) => `_xldudf_TONROW_PUNCHFORCE(A${row},B${row},"A36")`,
  (row) => `_xldudf_TONROW_SHEARFORCE("FB "&amp;B${row}&amp;"x"&amp;C${row},"A36","in",4)`,
  (row) => `_xldudf_TONROW_HOLEMIN(B${row},"A36")`,
  (row) => `_xldudf_TONROW_DIECLEARANCE(B${row},"A36")`,
  (row) => `_xldudf_TONROW_EDGEMIN(D${row},"in","rolled")`,
  (row) => `_xldudf_TONROW_SECTIONMASS("FB "&amp;B${row}&amp;"x"&amp;C${row},E${row})`,
];
const engaged = (row) => `B${row}/TAN(RADIANS(4))`;
const native = [
  (row) => `PI()*A${row}*B${row}*60/2`,
  (row) =>
    `IF(C${row}&gt;=${engaged(row)},60*B${row}^2/(2*TAN(RADIANS(4))),60*C${row}*(B${row}-C${row}*TAN(RADIANS(4))/2))/2`,
  (row) => `MAX(B${row},4*60*B${row}/240)`,
  (row) => `IF(B${row}&lt;=0.125,1/64,IF(B${row}&lt;=0.5,1/32,1/16))`,
  (row) =>
    `IF(D${row}&lt;=0.5,0.75,IF(D${row}&lt;=0.625,0.875,IF(D${row}&lt;=0.75,1,IF(D${row}&lt;=0.875,1.125,1.25))))`,
  (row) => `B${row}*C${row}*E${row}*0.283599`,
];

function sheet(rows, formulas) {
  const parts = [`${header}<worksheet xmlns="${main}"><sheetData>`];
  for (let row = 1; row <= rows; row++) {
    const pick = (list, step) => list[(row * step) % list.length];
    const inputs = [pick(holes, 1), pick(thicknesses, 3), pick(widths, 7), pick(bolts, 2), 6 + (row % 90)];
    parts.push(`<row r="${row}">`);
    inputs.forEach((value, at) => parts.push(`<c r="${'ABCDE'[at]}${row}"><v>${value}</v></c>`));
    formulas.forEach((formula, at) => parts.push(`<c r="${'FGHIJK'[at]}${row}"><f>${formula(row)}</f></c>`));
    parts.push('</row>');
  }
  parts.push('</sheetData></worksheet>');
  return parts.join('');
}

function workbook(rows, formulas) {
  const files = {
    '[Content_Types].xml': `${header}<Types xmlns="${contentTypes}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>`,
    '_rels/.rels': `${header}<Relationships xmlns="${packageRelationships}"><Relationship Id="rId1" Type="${relationships}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${header}<workbook xmlns="${main}" xmlns:r="${relationships}"><sheets><sheet name="Parts" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${header}<Relationships xmlns="${packageRelationships}"><Relationship Id="rId1" Type="${relationships}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': sheet(rows, formulas),
  };
  const packed = Object.entries(files).map(([name, text]) => [name, [strToU8(text), { level: 1 }]]);
  return zipSync(Object.fromEntries(packed));
}

export const oursWorkbook = (rows) => workbook(rows, ours);
export const nativeWorkbook = (rows) => workbook(rows, native);
