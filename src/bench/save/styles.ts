import { XmlReader } from '../../xlsx/xml/reader';
import { builtInFormats } from '../open/builtInFormats';
import { withAttribute } from './finishCells';
import { attributeText, insertBefore, type PackageParts } from './packageParts';

/** Adds styles that are like others but for their number format. */
export class AddedStyles {
  private readonly known = new Map<string, number>();

  constructor(
    private readonly parts: PackageParts,
    private readonly part: string,
  ) {}

  /** The number of the style like `base` with another number format; undefined where the package has no styles. */
  like(base: number, format: string): number | undefined {
    const key = `${base} ${format}`;
    if (!this.known.has(key)) {
      const number = this.add(base, format);
      if (number === undefined) return undefined;
      this.known.set(key, number);
    }
    return this.known.get(key);
  }

  private add(base: number, format: string): number | undefined {
    const id = this.formatId(format);
    const xml = this.parts.xml(this.part);
    if (xml === undefined) return undefined;
    const list = cellStyles(xml);
    const like = list[base] ?? list[0];
    if (like === undefined) return undefined;
    const style = withAttribute(withAttribute(like, 'numFmtId', String(id)), 'applyNumberFormat', '1');
    this.parts.set(this.part, withCount(insertBefore(xml, 'cellXfs', style), 'cellXfs', list.length + 1));
    return list.length;
  }

  private formatId(format: string): number {
    const builtIn = Object.entries(builtInFormats).find(([, code]) => code === format);
    if (builtIn) return Number(builtIn[0]);
    const xml = this.parts.xml(this.part) ?? '';
    const reader = new XmlReader(xml);
    let greatest = 163;
    let count = 0;
    let hasList = false;
    let root = -1;
    while (reader.next()) {
      if (reader.closing) continue;
      if (reader.name === 'styleSheet') root = reader.tagEnd;
      if (reader.name === 'numFmts') hasList = true;
      if (reader.name !== 'numFmt') continue;
      const id = Number(reader.attribute('numFmtId'));
      if (reader.attribute('formatCode') === format) return id;
      greatest = Math.max(greatest, id);
      count++;
    }
    const element = `<numFmt numFmtId="${greatest + 1}" formatCode="${attributeText(format)}"/>`;
    const grown = hasList
      ? withCount(insertBefore(xml, 'numFmts', element), 'numFmts', count + 1)
      : `${xml.slice(0, root)}<numFmts count="1">${element}</numFmts>${xml.slice(root)}`;
    this.parts.set(this.part, grown);
    return greatest + 1;
  }
}

function cellStyles(xml: string): string[] {
  const styles: string[] = [];
  const reader = new XmlReader(xml);
  let inside = false;
  while (reader.next()) {
    if (reader.name === 'cellXfs') inside = !reader.closing;
    if (!inside || reader.closing || reader.name !== 'xf') continue;
    const { tagStart } = reader;
    reader.skipElement();
    styles.push(xml.slice(tagStart, reader.position));
  }
  return styles;
}

function withCount(xml: string, element: string, count: number): string {
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.name === element && !reader.closing)
      return (
        xml.slice(0, reader.tagStart) + withAttribute(xml.slice(reader.tagStart), 'count', String(count))
      );
  }
  return xml;
}
