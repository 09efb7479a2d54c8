import { builtInFormats } from '../../open/builtInFormats.js';
import { sides, type CellLook } from '../../open/cellLook.js';
import { withPrefix } from '../parts/childElements.js';
import { withAttribute } from '../parts/cellMarks.js';
import { attributeText } from '../../../xlsx/xml/text.js';
import type { PackageParts } from '../../../xlsx/packageParts.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { withAlignment } from './alignment.js';
import { changedBorder, sameLine } from './border.js';
import { plainFill } from './fill.js';
import { changedFont } from './font.js';
import { plainStyles, StyleLists, type ListName } from './styleLists.js';

const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml';

/** Adds styles that are like others but for what was changed in the grid. */
export class AddedStyles {
  private readonly known = new Map<string, number>();
  private lists: StyleLists | undefined;

  constructor(
    private readonly parts: PackageParts,
    private readonly workbookPart: string,
    private readonly part: string,
  ) {}

  /** The number of the style like `base`, with what differs between the two looks. */
  changed(base: number, from: CellLook, to: CellLook): number {
    if (sameLook(from, to)) return base;
    const key = JSON.stringify([base, from, to]);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const number = this.add(base, from, to);
    this.known.set(key, number);
    return number;
  }

  /** Writes what was added into the part. */
  write(): void {
    if (!this.lists) return;
    const xml = this.lists.toXml();
    if (this.parts.xml(this.part) !== undefined) return this.parts.set(this.part, xml);
    this.parts.add(this.part, xml, contentType);
    this.parts.relate(this.workbookPart, 'styles', this.part);
  }

  private add(base: number, from: CellLook, to: CellLook): number {
    const lists = (this.lists ??= new StyleLists(this.parts.xml(this.part) ?? plainStyles));
    const styles = lists.items('cellXfs');
    let xf = styles[base] ?? styles[0] ?? withPrefix('<xf/>', lists.prefix);
    const set = (id: string, apply: string, number: number) =>
      (xf = withAttribute(withAttribute(xf, id, String(number)), apply, '1'));
    const item = (list: ListName, id: string) =>
      lists.items(list)[numberIn(xf, id)] ?? withPrefix(`<${list.slice(0, -1)}/>`, lists.prefix);
    if (from.format !== to.format)
      set('numFmtId', 'applyNumberFormat', formatId(lists, to.format ?? 'General'));
    const font = changedFont(item('fonts', 'fontId'), from, to);
    if (font !== item('fonts', 'fontId')) set('fontId', 'applyFont', lists.add('fonts', font));
    if (from.fillColor !== to.fillColor)
      set('fillId', 'applyFill', lists.add('fills', plainFill(to.fillColor, lists.prefix)));
    const border = changedBorder(item('borders', 'borderId'), from.borders, to.borders);
    if (border !== item('borders', 'borderId')) set('borderId', 'applyBorder', lists.add('borders', border));
    return lists.add('cellXfs', withAlignment(xf, from, to, lists.prefix));
  }
}

function numberIn(xf: string, attribute: string): number {
  const reader = new XmlReader(xf);
  return reader.next() ? Number(reader.attribute(attribute) ?? 0) : 0;
}

export function sameLook({ borders: lines, ...from }: CellLook, { borders, ...to }: CellLook): boolean {
  const names = [...Object.keys(from), ...Object.keys(to)] as (keyof typeof from)[];
  return (
    names.every((name) => from[name] === to[name]) &&
    sides.every((side) => sameLine(lines?.[side], borders?.[side]))
  );
}

function formatId(lists: StyleLists, format: string): number {
  const builtIn = Object.entries(builtInFormats).find(([, code]) => code === format);
  if (builtIn) return Number(builtIn[0]);
  let greatest = 163;
  for (const item of lists.items('numFmts')) {
    const reader = new XmlReader(item);
    if (!reader.next()) continue;
    const id = Number(reader.attribute('numFmtId'));
    if (reader.attribute('formatCode') === format) return id;
    greatest = Math.max(greatest, id);
  }
  const element = `<numFmt numFmtId="${greatest + 1}" formatCode="${attributeText(format)}"/>`;
  lists.add('numFmts', withPrefix(element, lists.prefix));
  return greatest + 1;
}
