import { builtInFormats } from '../../open/builtInFormats.js';
import { fontSwitches, strictNames } from '../../open/styles.js';
import { sides, usualSize, type CellLook, type Line } from '../../open/cellLook.js';
import type { PackageParts } from '../../../xlsx/packageParts.js';
import { withPrefix, XmlElement } from '../../../xlsx/xml/element.js';
import { attributeText } from '../../../xlsx/xml/text.js';

const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml';

/** A styles part for a package that has none. */
const plainStyles =
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="1"><font><sz val="10"/><name val="Arial"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>';

/** Adds styles that are like others but for what was changed in the grid; what the grid does not know stays. */
export class AddedStyles {
  private readonly known = new Map<string, number>();

  constructor(
    private readonly parts: PackageParts,
    private readonly workbookPart: string,
    private readonly part: string,
  ) {}

  /** The number of the style like `base`, with what differs between the two looks. */
  changed(base: number, from: CellLook, to: CellLook): number {
    if (sameLook(from, to)) return base;
    const key = JSON.stringify([base, from, to]);
    const known = this.known.get(key) ?? this.add(base, from, to);
    this.known.set(key, known);
    return known;
  }

  private root(): XmlElement {
    if (this.parts.xml(this.part) === undefined) {
      this.parts.add(this.part, plainStyles, contentType);
      this.parts.relate(this.workbookPart, 'styles', this.part);
    }
    return this.parts.root(this.part);
  }

  private add(base: number, from: CellLook, to: CellLook): number {
    const root = this.root();
    const styles = root.child('cellXfs')?.children ?? [];
    const xf = XmlElement.read(String(styles[base] ?? styles[0] ?? withPrefix('<xf/>', root.prefix)));
    const use = (kind: 'font' | 'border', apply: string, change: (item: XmlElement) => void) => {
      const id = Number(xf.attribute(`${kind}Id`) ?? 0);
      const before = String(root.child(`${kind}s`)?.children[id] ?? withPrefix(`<${kind}/>`, root.prefix));
      const item = XmlElement.read(before);
      change(item);
      const after = String(item);
      if (after !== before) xf.set({ [`${kind}Id`]: numberOf(root, `${kind}s`, after), [apply]: 1 });
    };
    if (from.format !== to.format)
      xf.set({ numFmtId: formatId(root, to.format ?? 'General'), applyNumberFormat: 1 });
    use('font', 'applyFont', (font) => changeFont(font, from, to));
    if (from.fillColor !== to.fillColor)
      xf.set({ fillId: numberOf(root, 'fills', plainFill(to.fillColor)), applyFill: 1 });
    use('border', 'applyBorder', (border) => changeBorder(border, from.borders, to.borders));
    align(xf, from, to);
    return numberOf(root, 'cellXfs', String(xf));
  }
}

function sameLook({ borders: lines, ...from }: CellLook, { borders, ...to }: CellLook): boolean {
  const names = [...Object.keys(from), ...Object.keys(to)] as (keyof typeof from)[];
  return (
    names.every((name) => from[name] === to[name]) &&
    sides.every((side) => sameLine(lines?.[side], borders?.[side]))
  );
}

const sameLine = (a: Line | undefined, b: Line | undefined): boolean =>
  a?.style === b?.style && a?.color === b?.color;

/** The number of an item of a list, which is added where no item is the same. */
function numberOf(root: XmlElement, name: string, item: string): number {
  const list = root.made(name);
  const wanted = withPrefix(item, root.prefix);
  const { children } = list;
  const same = children.findIndex((child) => String(child) === wanted);
  if (same >= 0) return same;
  list.insert(wanted);
  list.set({ count: children.length + 1 });
  return children.length;
}

function formatId(root: XmlElement, format: string): number {
  const builtIn = Object.entries(builtInFormats).find(([, code]) => code === format);
  if (builtIn) return Number(builtIn[0]);
  const formats = root.child('numFmts')?.children ?? [];
  const known = formats.find((item) => item.attribute('formatCode') === format);
  if (known) return Number(known.attribute('numFmtId'));
  const id = Math.max(163, ...formats.map((item) => Number(item.attribute('numFmtId')))) + 1;
  numberOf(root, 'numFmts', `<numFmt numFmtId="${id}" formatCode="${attributeText(format)}"/>`);
  return id;
}

function changeFont(font: XmlElement, from: CellLook, to: CellLook): void {
  for (const [name, element] of Object.entries(fontSwitches) as [keyof typeof fontSwitches, string][])
    if (!from[name] !== !to[name]) font.put(element, to[name] ? `<${element}/>` : undefined);
  if (from.fontSize !== to.fontSize) font.put('sz', `<sz val="${to.fontSize ?? usualSize}"/>`);
  if (from.textColor !== to.textColor) font.put('color', colorElement('color', to.textColor));
}

/** A plain fill of a color, or none. */
const plainFill = (color: string | undefined): string =>
  color
    ? `<fill><patternFill patternType="solid">${colorElement('fgColor', color)}<bgColor indexed="64"/></patternFill></fill>`
    : '<fill><patternFill patternType="none"/></fill>';

function changeBorder(border: XmlElement, from: CellLook['borders'], to: CellLook['borders']): void {
  for (const side of sides) {
    const line = to?.[side];
    if (sameLine(from?.[side], line)) continue;
    const strict = strictNames[side];
    const name = strict && border.child(strict) ? strict : side;
    const color = line && colorElement('color', line.color);
    border.put(name, line ? `<${name} style="${line.style}">${color}</${name}>` : `<${name}/>`);
  }
}

function align(xf: XmlElement, from: CellLook, to: CellLook): void {
  const attributes = {
    ...(from.align !== to.align && { horizontal: to.align }),
    ...(from.verticalAlign !== to.verticalAlign && {
      vertical: to.verticalAlign === 'middle' ? 'center' : to.verticalAlign,
    }),
    ...(!from.wrap !== !to.wrap && { wrapText: to.wrap ? 1 : undefined }),
    ...(!from.clip !== !to.clip && { shrinkToFit: to.clip ? 1 : undefined }),
    ...(from.turn !== to.turn && { textRotation: fileRotation(to.turn) }),
  };
  if (Object.keys(attributes).length === 0) return;
  xf.made('alignment').set(attributes);
  xf.set({ applyAlignment: 1 });
}

/** Upwards from 1 to 90, downwards from 91 to 180. */
const fileRotation = (turn: number | undefined): number | undefined =>
  turn ? (turn < 0 ? -turn : 90 + turn) : undefined;

/** A color such as `#1F2933` as an element. */
export const colorElement = (name: string, color: string | undefined): string | undefined =>
  color && `<${name} rgb="FF${color.slice(1).toUpperCase()}"/>`;
