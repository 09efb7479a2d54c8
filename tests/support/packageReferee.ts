// Rules of the file format, written from its standard (ECMA-376 parts 1 and 2), for every workbook that is written here.
// It reads packages with a parser that is not ours.
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { JSDOM } from 'jsdom';

const { DOMParser } = new JSDOM('').window;

const worksheetOrder =
  'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst'.split(
    ' ',
  );
const workbookOrder =
  'fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst'.split(
    ' ',
  );
const tableOrder = 'autoFilter sortState tableColumns tableStyleInfo extLst'.split(' ');
const stylesOrder =
  'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst'.split(' ');
const cellAttributes = new Set(['r', 's', 't', 'cm', 'vm', 'ph']);
const cellTypes = new Set(['b', 'd', 'e', 'inlineStr', 'n', 's', 'str']);
const longestText = 32_767;
const longestFormula = 8_192;
const [mostRows, mostColumns] = [1_048_576, 16_384];

interface Zone {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** What is wrong with a package; nothing where all rules hold. */
export function violations(bytes: Uint8Array): string[] {
  return new Referee(bytes).all();
}

class Referee {
  private readonly found: string[] = [];
  private readonly texts: Map<string, string>;
  private readonly documents = new Map<string, Document>();
  private readonly tableNames = new Map<string, string>();
  private readonly tableIds = new Map<string, string>();

  constructor(bytes: Uint8Array) {
    this.texts = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  }

  all(): string[] {
    this.wellFormed();
    this.contentTypes();
    this.relationships();
    const [book] = this.linked('', 'officeDocument');
    if (book === undefined) this.say('the package', 'leads to no workbook');
    else this.workbook(book);
    return this.found;
  }

  private say(where: string, what: string): void {
    this.found.push(`${where}: ${what}`);
  }

  private wellFormed(): void {
    for (const [name, text] of this.texts) {
      if (!/\.(?:xml|rels)$/i.test(name)) continue;
      const document = new DOMParser().parseFromString(text, 'application/xml') as unknown as Document;
      if (document.getElementsByTagName('parsererror').length > 0) this.say(name, 'is not well formed');
      else this.documents.set(name, document);
    }
    const lower = [...this.texts.keys()].map((name) => name.toLowerCase());
    if (new Set(lower).size !== lower.length) this.say('the package', 'has two parts of one name');
  }

  private root(name: string): Element | undefined {
    return this.documents.get(name)?.documentElement;
  }

  private contentTypes(): void {
    const types = this.root('[Content_Types].xml');
    if (!types) return this.say('the package', 'has no content types');
    const overrides = children(types, 'Override').map((each) => each.getAttribute('PartName') ?? '');
    const defaults = children(types, 'Default').map((each) =>
      (each.getAttribute('Extension') ?? '').toLowerCase(),
    );
    for (const part of overrides)
      if (!this.texts.has(part.slice(1))) this.say('content types', `${part} is not there`);
    for (const name of this.texts.keys()) {
      const typed =
        overrides.includes(`/${name}`) ||
        defaults.includes(name.slice(name.lastIndexOf('.') + 1).toLowerCase());
      if (!typed && name !== '[Content_Types].xml') this.say(name, 'has no content type');
    }
    repeated(overrides.map((part) => part.toLowerCase())).forEach((part) =>
      this.say('content types', `${part} stands twice`),
    );
  }

  private relationships(): void {
    for (const name of this.texts.keys()) {
      if (!name.endsWith('.rels')) continue;
      const owner = ownerOf(name);
      if (owner !== '' && !this.texts.has(owner)) this.say(name, 'belongs to no part');
      const links = children(this.root(name), 'Relationship');
      repeated(links.map((link) => link.getAttribute('Id') ?? '')).forEach((id) =>
        this.say(name, `${id} stands twice`),
      );
      for (const link of links) {
        if (link.getAttribute('TargetMode') === 'External') continue;
        const target = targetOf(owner, link.getAttribute('Target') ?? '');
        if (!this.texts.has(target)) this.say(name, `leads to ${target}, which is not there`);
      }
      const ids = new Set(links.map((link) => link.getAttribute('Id')));
      for (const [, id] of (this.texts.get(owner) ?? '').matchAll(/\sr:(?:id|embed|link)="([^"]*)"/g))
        if (!ids.has(id ?? '')) this.say(owner, `names the relationship ${id}, which it lacks`);
    }
    for (const [name, text] of this.texts)
      if (/\sr:id="/.test(text) && !this.texts.has(relationshipsOf(name)))
        this.say(name, 'names relationships and has none');
  }

  /** The parts another leads to, by the end of the relationship's type. */
  private linked(owner: string, type: string): string[] {
    return children(this.root(relationshipsOf(owner)), 'Relationship')
      .filter((link) => (link.getAttribute('Type') ?? '').endsWith(`/${type}`))
      .map((link) => targetOf(owner, link.getAttribute('Target') ?? ''));
  }

  private ordered(name: string, root: Element | undefined, order: readonly string[]): void {
    let last = -1;
    for (const { localName } of root?.children ?? []) {
      const at = order.indexOf(localName);
      if (at < 0) this.say(name, `has an element ${localName} that does not belong there`);
      else if (at < last) this.say(name, `has ${localName} out of order`);
      last = Math.max(last, at);
    }
  }

  /** A stated count is the number of what it counts. */
  private counted(name: string, list: Element | undefined, attribute = 'count'): void {
    const stated = list?.getAttribute(attribute);
    const real = list?.children.length ?? 0;
    if (list && stated !== null && stated !== undefined && Number(stated) !== real)
      this.say(name, `${list.localName} says ${stated} and holds ${real}`);
    if (list && real === 0 && list.localName !== 'tableStyles') this.say(name, `${list.localName} is empty`);
  }

  private workbook(part: string): void {
    const root = this.root(part);
    this.ordered(part, root, workbookOrder);
    const sheets = children(child(root, 'sheets'), 'sheet');
    const names = sheets.map((sheet) => sheet.getAttribute('name') ?? '');
    for (const name of names) {
      const bad =
        name === '' || name.length > 31 || /[\\/?*[\]:]|^'|'$/.test(name) || name.toLowerCase() === 'history';
      if (bad) this.say(part, `${JSON.stringify(name)} is no name of a sheet`);
    }
    repeated(names.map((name) => name.toLowerCase())).forEach((name) =>
      this.say(part, `two sheets are called ${name}`),
    );
    repeated(sheets.map((sheet) => sheet.getAttribute('sheetId') ?? '')).forEach((id) =>
      this.say(part, `two sheets have the id ${id}`),
    );
    if (sheets.every((sheet) => (sheet.getAttribute('state') ?? 'visible') !== 'visible'))
      this.say(part, 'shows no sheet');
    for (const view of root?.getElementsByTagNameNS('*', 'workbookView') ?? [])
      for (const attribute of ['activeTab', 'firstSheet'])
        if (Number(view.getAttribute(attribute) ?? 0) >= sheets.length)
          this.say(part, `${attribute} is no sheet`);
    this.definedNames(part, root, sheets.length);
    const parts = this.indexes(part);
    sheets.forEach((sheet, at) => {
      const id = [...sheet.attributes].find(({ localName, prefix }) => localName === 'id' && prefix)?.value;
      const link = children(this.root(relationshipsOf(part)), 'Relationship').find(
        (each) => each.getAttribute('Id') === id,
      );
      const target = targetOf(part, link?.getAttribute('Target') ?? '');
      if (link?.getAttribute('Type')?.endsWith('/worksheet')) this.worksheet(target, names[at] ?? '', parts);
    });
    this.calcChain(part, sheets);
  }

  private definedNames(part: string, root: Element | undefined, sheets: number): void {
    const list = child(root, 'definedNames');
    const names = children(list, 'definedName');
    if (list && names.length === 0) this.say(part, 'definedNames is empty');
    repeated(
      names.map(
        (each) => `${each.getAttribute('name')?.toLowerCase()} ${each.getAttribute('localSheetId') ?? ''}`,
      ),
    ).forEach((name) => this.say(part, `two names are ${name}`));
    for (const each of names) {
      const name = each.getAttribute('name') ?? '';
      if (Number(each.getAttribute('localSheetId') ?? 0) >= sheets) this.say(part, `${name} is of no sheet`);
      if (!isName(name)) this.say(part, `${name} is no name`);
      if ((each.textContent ?? '') === '') this.say(part, `${name} stands for nothing`);
      this.tableNames.set(name.toLowerCase(), 'a defined name');
    }
  }

  /** How many of each there are that sheets point to by number. */
  private indexes(book: string) {
    const [styles] = this.linked(book, 'styles');
    const [strings] = this.linked(book, 'sharedStrings');
    const [metadata] = this.linked(book, 'sheetMetadata');
    const root = this.root(styles ?? '');
    if (styles) this.ordered(styles, root, stylesOrder);
    for (const list of ['fonts', 'fills', 'borders', 'cellStyleXfs', 'cellXfs', 'cellStyles', 'numFmts'])
      this.counted(styles ?? '', child(root, list));
    const size = (list: string) => child(root, list)?.children.length ?? 0;
    for (const xf of children(child(root, 'cellXfs'), 'xf'))
      for (const [attribute, list] of [
        ['fontId', 'fonts'],
        ['fillId', 'fills'],
        ['borderId', 'borders'],
        ['xfId', 'cellStyleXfs'],
      ] as const)
        if (Number(xf.getAttribute(attribute) ?? 0) >= size(list))
          this.say(styles ?? '', `${attribute} is none`);
    const texts = children(this.root(strings ?? ''), 'si');
    for (const text of texts)
      if ((text.textContent ?? '').length > longestText) this.say(strings ?? '', 'a text is too long');
    const unique = this.root(strings ?? '')?.getAttribute('uniqueCount');
    if (unique && Number(unique) !== texts.length)
      this.say(strings ?? '', `says ${unique} and holds ${texts.length}`);
    return {
      styles: size('cellXfs'),
      rules: size('dxfs'),
      texts: texts.map((text) => text.textContent ?? ''),
      marks: child(this.root(metadata ?? ''), 'cellMetadata')?.children.length ?? 0,
    };
  }

  private worksheet(part: string, name: string, known: ReturnType<Referee['indexes']>): void {
    const root = this.root(part);
    if (!root) return;
    this.ordered(part, root, worksheetOrder);
    for (const list of ['mergeCells', 'dataValidations', 'tableParts', 'cols', 'hyperlinks'])
      this.counted(part, child(root, list));
    const shown = new Map<string, Shown>();
    let lastRow = 0;
    for (const row of children(child(root, 'sheetData'), 'row')) {
      const number = Number(row.getAttribute('r') ?? lastRow + 1);
      if (number <= lastRow || number > mostRows) this.say(part, `row ${number} is out of order`);
      lastRow = number;
      let lastColumn = 0;
      for (const cell of children(row, 'c')) {
        const place = placeOf(cell.getAttribute('r') ?? '');
        if (!place || place.row !== number || place.column <= lastColumn)
          this.say(part, `the cell ${cell.getAttribute('r')} is out of place`);
        lastColumn = place?.column ?? lastColumn;
        shown.set(cell.getAttribute('r') ?? '', this.cell(`${name}!${cell.getAttribute('r')}`, cell, known));
      }
    }
    const merged = children(child(root, 'mergeCells'), 'mergeCell').map((each) =>
      zoneOf(each.getAttribute('ref')),
    );
    this.apart(part, merged, 'merged cells');
    for (const rule of root.getElementsByTagNameNS('*', 'cfRule')) {
      const id = rule.getAttribute('dxfId');
      if (id !== null && Number(id) >= known.rules)
        this.say(part, `a rule has the format ${id}, which is none`);
    }
    const zones = this.linked(part, 'table').map((table) => this.table(table, shown));
    this.apart(part, zones, 'tables');
    const tableParts = children(child(root, 'tableParts'), 'tablePart').length;
    if (tableParts !== zones.length)
      this.say(part, `names ${tableParts} tables and leads to ${zones.length}`);
  }

  private apart(part: string, zones: readonly (Zone | undefined)[], what: string): void {
    zones.forEach((a, at) => {
      if (!a) return this.say(part, `${what} have no range`);
      if (zones.slice(at + 1).some((b) => b && overlap(a, b))) this.say(part, `${what} overlap`);
    });
  }

  private cell(where: string, cell: Element, known: ReturnType<Referee['indexes']>): Shown {
    for (const { name } of cell.attributes)
      if (!cellAttributes.has(name) && !name.startsWith('xmlns'))
        this.say(where, `has the attribute ${name}`);
    const type = cell.getAttribute('t') ?? 'n';
    if (!cellTypes.has(type)) this.say(where, `is of the type ${type}`);
    if (Number(cell.getAttribute('s') ?? 0) >= Math.max(1, known.styles))
      this.say(where, 'has a style that is none');
    if (Number(cell.getAttribute('cm') ?? 0) > known.marks) this.say(where, 'has a mark that is none');
    const order = [...cell.children].map(({ localName }) => ['f', 'v', 'is', 'extLst'].indexOf(localName));
    if (order.some((at, index) => at < 0 || at <= (order[index - 1] ?? -1)))
      this.say(where, 'holds elements out of order');
    const value = child(cell, 'v');
    if (value && value.attributes.length > 0) this.say(where, 'has attributes on its value');
    const raw = value?.textContent ?? '';
    if (type === 'n' && value && !/^-?\.?\d[\d.]*(?:e[+-]?\d+)?$/i.test(raw))
      this.say(where, `${raw} is no number`);
    if (type === 's' && known.texts[Number(raw)] === undefined)
      this.say(where, `has the text ${raw}, which is none`);
    if (type === 'b' && !/^[01]$/.test(raw)) this.say(where, `${raw} is no truth value`);
    if ((type === 'inlineStr') !== (child(cell, 'is') !== undefined))
      this.say(where, 'holds a text of another kind');
    const text =
      type === 's'
        ? (known.texts[Number(raw)] ?? '')
        : type === 'inlineStr'
          ? (child(cell, 'is')?.textContent ?? '')
          : raw;
    if (unescaped(text).length > longestText) this.say(where, 'holds a text that is too long');
    const formula = child(cell, 'f');
    if (formula) this.formula(where, formula);
    return {
      text: unescaped(text),
      isText: ['s', 'inlineStr', 'str'].includes(type),
      hasFormula: formula !== undefined,
    };
  }

  private formula(where: string, element: Element): void {
    const text = element.textContent ?? '';
    if (text.length > longestFormula) this.say(where, 'holds a formula that is too long');
    if (text.startsWith('=')) this.say(where, 'holds a formula with its equals sign');
    const bare = text.replace(/"(?:[^"]|"")*"/g, '""');
    if (/\[@/.test(bare)) this.say(where, 'writes @ for this row');
    if (startsOfBrackets(bare).some((before) => !/[\p{L}\p{N}_.\\]$/u.test(before)))
      this.say(where, 'names a row of no table');
    if (/\bTONROW\./i.test(bare)) this.say(where, 'names a function as people read it');
    const ref = element.getAttribute('ref');
    if (ref !== null && !zoneOf(ref)) this.say(where, `${ref} is no range`);
    if (element.getAttribute('t') === 'array' && ref === null) this.say(where, 'fills no range');
  }

  private table(part: string, shown: ReadonlyMap<string, Shown>): Zone | undefined {
    const root = this.root(part);
    this.ordered(part, root, tableOrder);
    const name = root?.getAttribute('displayName') ?? '';
    const other = this.tableNames.get(name.toLowerCase());
    if (!isName(name)) this.say(part, `${JSON.stringify(name)} is no name of a table`);
    if (other !== undefined) this.say(part, `${name} is the name of ${other}, too`);
    this.tableNames.set(name.toLowerCase(), 'a table');
    const id = root?.getAttribute('id') ?? '';
    if (this.tableIds.has(id)) this.say(part, `has the id ${id} of another table`);
    this.tableIds.set(id, part);
    const zone = zoneOf(root?.getAttribute('ref') ?? null);
    if (!root || !zone) return zone;
    const headings = Number(root.getAttribute('headerRowCount') ?? 1);
    const totals = Number(root.getAttribute('totalsRowCount') ?? 0);
    if (zone.bottom - zone.top + 1 < headings + totals + 1) this.say(part, `${name} has no row of data`);
    const columns = children(child(root, 'tableColumns'), 'tableColumn');
    this.counted(part, child(root, 'tableColumns'));
    if (columns.length !== zone.right - zone.left + 1)
      this.say(part, `${name} has ${columns.length} columns in ${root.getAttribute('ref')}`);
    const names = columns.map((column) => unescaped(column.getAttribute('name') ?? ''));
    repeated(names.map((each) => each.toLowerCase())).forEach((each) =>
      this.say(part, `two columns are ${each}`),
    );
    repeated(columns.map((column) => column.getAttribute('id') ?? '')).forEach((each) =>
      this.say(part, `two columns have the id ${each}`),
    );
    columns.forEach((column, at) => {
      const heading = shown.get(addressOf(zone.top, zone.left + at));
      const own = names[at] ?? '';
      if (own === '' || own.length > 255) this.say(part, 'a column has no name, or one that is too long');
      if (/[\n\r\t]/.test(column.getAttribute('name') ?? ''))
        this.say(part, 'a line break in a name is not escaped');
      if (headings > 0 && (heading?.text !== own || !heading.isText || heading.hasFormula))
        this.say(part, `the heading of ${JSON.stringify(own)} is ${JSON.stringify(heading?.text ?? null)}`);
      for (const formula of column.getElementsByTagNameNS('*', 'calculatedColumnFormula'))
        this.formula(`${name}[${own}]`, formula);
    });
    const filter = child(root, 'autoFilter')?.getAttribute('ref');
    const filtered = zoneOf(filter ?? null);
    if (filter != null && (!filtered || filtered.bottom > zone.bottom - totals || filtered.top !== zone.top))
      this.say(part, `filters ${filter} of ${root.getAttribute('ref')}`);
    return zone;
  }

  private calcChain(book: string, sheets: readonly Element[]): void {
    const [part] = this.linked(book, 'calcChain');
    if (part === undefined) return;
    for (const entry of children(this.root(part), 'c')) {
      const id = entry.getAttribute('i');
      if (id !== null && !sheets.some((sheet) => sheet.getAttribute('sheetId') === id))
        this.say(part, `names the sheet ${id}, which is none`);
    }
  }
}

interface Shown {
  text: string;
  isText: boolean;
  hasFormula: boolean;
}

const children = (element: Element | undefined, name: string): Element[] =>
  [...(element?.children ?? [])].filter(({ localName }) => localName === name);
const child = (element: Element | undefined, name: string): Element | undefined => children(element, name)[0];
const repeated = (items: readonly string[]) => [
  ...new Set(items.filter((item, at) => items.indexOf(item) !== at)),
];
const relationshipsOf = (part: string) =>
  path.posix
    .join(path.posix.dirname(part), '_rels', `${path.posix.basename(part)}.rels`)
    .replace(/^\.\//, '');
const ownerOf = (rels: string) => {
  const name = path.posix.basename(rels).slice(0, -'.rels'.length);
  return name === '' ? '' : path.posix.join(path.posix.dirname(path.posix.dirname(rels)), name);
};
const targetOf = (owner: string, target: string) =>
  target.startsWith('/') ? target.slice(1) : path.posix.join(path.posix.dirname(owner), target);
const unescaped = (text: string) =>
  text.replace(/_x([\da-f]{4})_/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
const isName = (name: string) =>
  /^[\p{L}_\\][\p{L}\p{N}_.\\?]{0,254}$/u.test(name) && !/^(?:[a-z]{1,3}\d{1,7}|r|c|r\d*c\d*)$/i.test(name);

function placeOf(address: string): { row: number; column: number } | undefined {
  const [, letters, digits] = /^([A-Z]{1,3})([1-9]\d{0,6})$/.exec(address) ?? [];
  if (!letters || !digits) return undefined;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return column <= mostColumns && Number(digits) <= mostRows ? { row: Number(digits), column } : undefined;
}

function zoneOf(ref: string | null): Zone | undefined {
  const [first = '', last = first] = (ref ?? '').split(':');
  const [a, b] = [placeOf(first), placeOf(last)];
  if (!a || !b || a.row > b.row || a.column > b.column) return undefined;
  return { top: a.row, left: a.column, bottom: b.row, right: b.column };
}

function addressOf(row: number, column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `${letters}${row}`;
}

const overlap = (a: Zone, b: Zone) =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** What stands before each bracket of a table, and before none of another file. */
function startsOfBrackets(formula: string): string[] {
  const found: string[] = [];
  let depth = 0;
  [...formula].forEach((letter, at, all) => {
    if (letter === '[' && depth === 0 && !/\d/.test(all[at + 1] ?? '')) found.push(all.slice(0, at).join(''));
    if (letter === '[') depth += 1;
    if (letter === ']') depth -= 1;
  });
  return found;
}
