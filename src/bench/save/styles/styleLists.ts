import { applyEdits, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { withAttribute } from '../parts/cellMarks.js';
import { withPrefix } from '../parts/childElements.js';

/** The lists of a styles part that grow, in the order of the format. */
const listNames = ['numFmts', 'fonts', 'fills', 'borders', 'cellStyleXfs', 'cellXfs'] as const;
export type ListName = (typeof listNames)[number];

/** A styles part for a package that has none. */
export const plainStyles =
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="1"><font><sz val="10"/><name val="Arial"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>';

interface List {
  items: string[];
  /** How many of them the part has. */
  known: number;
}

/** The numbered lists of a styles part, which may be added to. */
export class StyleLists {
  readonly prefix: string;
  private readonly lists = new Map<string, List>();

  constructor(private readonly xml: string) {
    const reader = new XmlReader(xml);
    let list: List | undefined;
    let prefix = '';
    while (reader.next()) {
      if (reader.name === 'styleSheet') prefix = reader.prefix;
      else if ((listNames as readonly string[]).includes(reader.name)) {
        list = reader.closing ? undefined : { items: [], known: 0 };
        if (list) this.lists.set(reader.name, list);
        if (reader.empty) list = undefined;
      } else if (list && !reader.closing) {
        const { tagStart } = reader;
        reader.skipElement();
        list.items.push(xml.slice(tagStart, reader.position));
        list.known++;
      } else if (!list && !reader.closing && reader.name === 'dxfs') reader.skipElement();
    }
    this.prefix = prefix;
  }

  items(name: ListName): readonly string[] {
    return this.lists.get(name)?.items ?? [];
  }

  /** The number of an item, which is added where no item is the same. */
  add(name: ListName, item: string): number {
    const list = this.lists.get(name) ?? { items: [], known: 0 };
    this.lists.set(name, list);
    const same = list.items.indexOf(item);
    if (same >= 0) return same;
    return list.items.push(item) - 1;
  }

  toXml(): string {
    const { xml, prefix } = this;
    const reader = new XmlReader(xml);
    const edits: TextEdit[] = [];
    const missing = new Map([...this.lists].filter(([, { items, known }]) => items.length > known));
    let rootEnd = 0;
    while (reader.next()) {
      if (reader.name === 'styleSheet' && !reader.closing) rootEnd = reader.tagEnd;
      const list = missing.get(reader.name);
      if (!list || reader.closing) continue;
      missing.delete(reader.name);
      edits.push(...grown(reader, list));
    }
    const made = listNames.flatMap((name) => {
      const items = missing.get(name)?.items;
      return items
        ? [{ name, text: withPrefix(`<${name} count="${items.length}">`, prefix) + items.join('') }]
        : [];
    });
    for (const { name, text } of made) {
      const at = this.placeFor(name, rootEnd);
      edits.push({ start: at, end: at, text: `${text}</${prefix}${name}>` });
    }
    return applyEdits(xml, edits);
  }

  /** After the last list that comes before it. */
  private placeFor(name: ListName, rootEnd: number): number {
    const before = listNames.slice(0, listNames.indexOf(name));
    const reader = new XmlReader(this.xml);
    let at = rootEnd;
    while (reader.next()) {
      if (reader.closing || !(before as readonly string[]).includes(reader.name)) continue;
      reader.skipElement();
      at = reader.position;
    }
    return at;
  }
}

/** A list with what was added, and its count. Moves past it. */
function grown(reader: XmlReader, { items, known }: List): TextEdit[] {
  const { xml, tagStart, tagEnd, prefix, name } = reader;
  const open = withAttribute(xml.slice(tagStart, tagEnd), 'count', String(items.length));
  const text = items.slice(known).join('');
  if (reader.empty)
    return [
      {
        start: tagStart,
        end: tagEnd,
        text: `${open.slice(0, -2).trimEnd()}>${text}</${prefix}${name}>`,
      },
    ];
  reader.skipElement();
  return [
    { start: tagStart, end: tagEnd, text: open },
    { start: reader.tagStart, end: reader.tagStart, text },
  ];
}
