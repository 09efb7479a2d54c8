import { mainSpace, part } from './xml.mjs';

/** Cell formats by name; number formats 0 to 49 are the file format's own, 164 and above are ours. */
const formats = {
  general: {},
  text: { number: 49 },
  whole: { number: 3 },
  one: { number: 164 },
  share: { number: 9 },
  money: { number: 4 },
  dayMonth: { number: 16 },
  title: { font: 1 },
  note: { font: 2 },
  bold: { font: 3 },
  boldMoney: { font: 3, number: 4 },
  boldOne: { font: 3, number: 164 },
  boldWhole: { font: 3, number: 3 },
  boldShare: { font: 3, number: 9 },
  heading: { font: 3, fill: 2, alignment: '<alignment vertical="center" wrapText="1"/>' },
  wrapped: { alignment: '<alignment vertical="top" wrapText="1"/>' },
  stamp: { font: 3, fill: 3 },
};
const names = Object.keys(formats);

export function styleIndex(name = 'general') {
  const index = names.indexOf(name);
  if (index < 0) throw new Error(`There is no cell style "${name}".`);
  return index;
}

/** Colors of the verdict rules; their order is that of the rules' `dxfId`. */
export const verdictColors = {
  good: 0,
  near: 1,
  notChecked: 2,
  bad: 3,
  offPress: 4,
};

const font = (more, size = 10) =>
  `<font>${more}<sz val="${size}"/><color rgb="FF1F2933"/><name val="Arial"/><family val="2"/></font>`;
const solid = (rgb) =>
  `<fill><patternFill patternType="solid"><fgColor rgb="${rgb}"/><bgColor indexed="64"/></patternFill></fill>`;
const rule = (text, background) =>
  `<dxf><font><color rgb="${text}"/></font><fill><patternFill><bgColor rgb="${background}"/></patternFill></fill></dxf>`;

function cellFormat({ number = 0, font: fontId = 0, fill = 0, alignment = '' }) {
  const applied =
    (number ? ' applyNumberFormat="1"' : '') +
    (fontId ? ' applyFont="1"' : '') +
    (fill ? ' applyFill="1"' : '') +
    (alignment ? ' applyAlignment="1"' : '');
  const open = `<xf numFmtId="${number}" fontId="${fontId}" fillId="${fill}" borderId="0" xfId="0"${applied}`;
  return alignment ? `${open}>${alignment}</xf>` : `${open}/>`;
}

export function stylesPart() {
  const fonts = [font(''), font('<b/>', 14), font('<i/>'), font('<b/>')];
  const fills = [
    '<fill><patternFill patternType="none"/></fill>',
    '<fill><patternFill patternType="gray125"/></fill>',
    solid('FFDCE6F0'),
    solid('FFFFF4CC'),
  ];
  const rules = [
    rule('FF1E5B32', 'FFD9F0DF'),
    rule('FF7A4A00', 'FFFFE8B8'),
    rule('FF24415F', 'FFDCE8F5'),
    rule('FF8A1C1C', 'FFF9D9D6'),
    rule('FF3F4650', 'FFE6E8EB'),
  ];
  const counted = (tag, items) => `<${tag} count="${items.length}">${items.join('')}</${tag}>`;
  return part(
    `<styleSheet xmlns="${mainSpace}">` +
      '<numFmts count="1"><numFmt numFmtId="164" formatCode="#,##0.0"/></numFmts>' +
      counted('fonts', fonts) +
      counted('fills', fills) +
      '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      counted(
        'cellXfs',
        names.map((name) => cellFormat(formats[name])),
      ) +
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
      counted('dxfs', rules) +
      '<tableStyles count="0" defaultTableStyle="TableStyleMedium2" defaultPivotStyle="PivotStyleLight16"/>' +
      '</styleSheet>',
  );
}
