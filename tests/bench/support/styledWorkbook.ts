import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { workbookParts, zipParts } from '../../xlsx/support/buildWorkbook.js';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** Styles as desktop programs write them: a theme, a protected style, double lines, a prefix of extensions. */
const styles = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<styleSheet xmlns="${main}"><fonts count="2" knownFonts="1"><font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font><i/><sz val="11"/><color theme="5"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font></fonts><fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor theme="4" tint="0.5"/><bgColor indexed="64"/></patternFill></fill></fills><borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border diagonalUp="1"><left style="hair"><color indexed="64"/></left><right/><top/><bottom style="double"><color auto="1"/></bottom><diagonal style="thin"><color auto="1"/></diagonal></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="2" borderId="1" xfId="0" quotePrefix="1" applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1" applyProtection="1"><alignment horizontal="justify" indent="1"/><protection locked="0"/></xf><xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

export const sheetParts = (
  sheetXml: string,
  others: Record<string, string> = {},
  more: Parameters<typeof workbookParts>[0] = [],
): Record<string, string> => {
  const parts = workbookParts([{ name: 'Data' }, ...more]);
  const rels = parts['xl/_rels/workbook.xml.rels'] as string;
  const types = parts['[Content_Types].xml'] as string;
  return {
    ...parts,
    'xl/worksheets/sheet1.xml': `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${main}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">${sheetXml}</worksheet>`,
    'xl/_rels/workbook.xml.rels': rels.replace(
      '</Relationships>',
      '<Relationship Id="rIdStyles" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>',
    ),
    '[Content_Types].xml': types.replace(
      '</Types>',
      '<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>',
    ),
    'xl/styles.xml': styles,
    ...others,
  };
};

/** A sheet Data with styled cells, as other programs write it. */
export const otherWritersWorkbook = (): Uint8Array =>
  zipParts(
    sheetParts(
      '<sheetData><row r="1"><c r="A1" s="1" t="inlineStr"><is><t>Heading</t></is></c><c r="B1" s="1"/><c r="C1"><v>3</v></c></row><row r="3"><c r="C3" s="2"><v>45000</v></c></row></sheetData>',
    ),
  );

/** A part of a package as text. */
export function partOf(bytes: Uint8Array, name: string): string {
  const part = unzipSync(bytes)[name];
  if (!part) throw new Error(`there is no part ${name}`);
  return strFromU8(part);
}

export const partNames = (bytes: Uint8Array): string[] => Object.keys(unzipSync(bytes));

/** A package with one of its parts changed. */
export function withPart(bytes: Uint8Array, name: string, change: (xml: string) => string): Uint8Array {
  return zipSync({ ...unzipSync(bytes), [name]: strToU8(change(partOf(bytes, name))) }, { level: 6 });
}
