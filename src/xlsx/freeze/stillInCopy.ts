import type { Workbook } from '../workbook.js';
import { XmlReader } from '../xml/reader.js';
import { callsUs } from '../../sheet/formula/ourCalls.js';

/** What a reader of a workbook may find besides the cells that are shown, one sentence each. */
export function stillInCopy(workbook: Workbook): string[] {
  return [...ofSheets(workbook), ...ofParts(workbook), ...ofProperties(workbook)];
}

function ofSheets({ sheets, tables, package: opened }: Workbook): string[] {
  const hidden = sheets.filter(({ visibility }) => visibility !== 'visible').map(({ name }) => name);
  const rows = sheets.reduce((sum, { cells }) => sum + (cells?.hiddenRows.size ?? 0), 0);
  const headers = sheets.flatMap(({ cells }) => headerTexts(cells?.xml ?? ''));
  const filling = opened.archive.entries.flatMap(({ name }) =>
    /\/tables\/[^/]+\.xml$/i.test(name) ? fillingColumns(opened.xml(name) ?? '') : [],
  );
  return [
    ...said(hidden.length > 0, `Hidden sheets: ${hidden.join(', ')}.`),
    ...said(rows > 0, `${rows} hidden rows.`),
    ...said(headers.length > 0, `Page headers and footers: ${[...new Set(headers)].join('; ')}.`),
    ...said(
      tables.length > 0 && filling.length > 0,
      `Table columns that fill new rows with our formulas: ${filling.join(', ')}.`,
    ),
  ];
}

const kinds: [part: RegExp, sentence: string][] = [
  [/\/(?:comments|threadedComment)[^/]*\.xml$/i, 'Comments.'],
  [/\/pivotCache\//i, 'Pivot tables, with the data they were made from.'],
  [/\/charts?\//i, 'Charts, with the numbers they show.'],
  [/\/(?:embeddings|media)\//i, 'Pictures or files inside the workbook.'],
  [/vbaProject\.bin$/i, 'Macros.'],
  [/\/printerSettings\//i, 'Settings of a printer.'],
  [/(?:^|\/)thumbnail\.[a-z]+$/i, 'A small picture of the first sheet.'],
  [/\/webextensions?\//i, 'What asks for an add-in when the file is opened.'],
];

function ofParts({ package: opened }: Workbook): string[] {
  const names = opened.archive.entries.map(({ name }) => name);
  return kinds.flatMap(([part, sentence]) =>
    said(
      names.some((name) => part.test(name)),
      sentence,
    ),
  );
}

const said = (condition: boolean, sentence: string) => (condition ? [sentence] : []);

/** Properties of the document by the names of their elements, as a reader knows them. */
const properties: [element: string, label: string][] = [
  ['title', 'title'],
  ['subject', 'subject'],
  ['keywords', 'keywords'],
  ['category', 'category'],
  ['description', 'comments'],
  ['Company', 'company'],
  ['Manager', 'manager'],
];

function ofProperties({ package: opened }: Workbook): string[] {
  const texts = new Map<string, Set<string>>();
  for (const part of ['docProps/core.xml', 'docProps/app.xml']) {
    const reader = new XmlReader(opened.xml(part) ?? '');
    while (reader.next()) {
      if (reader.closing || reader.empty) continue;
      const { name } = reader;
      const label = ['creator', 'lastModifiedBy'].includes(name)
        ? 'author'
        : properties.find(([element]) => element === name)?.[1];
      if (label === undefined) continue;
      texts.set(label, (texts.get(label) ?? new Set()).add(reader.text()));
    }
  }
  return [...texts].flatMap(([label, found]) => {
    const text = [...found].filter((each) => each !== '').join(', ');
    return said(text !== '', `The file's ${label}: ${text}.`);
  });
}

const headerParts = ['oddHeader', 'oddFooter', 'evenHeader', 'evenFooter', 'firstHeader', 'firstFooter'];

/** Headers and footers as they print, without the codes of their format. */
function headerTexts(xml: string): string[] {
  const reader = new XmlReader(xml);
  const texts: string[] = [];
  while (reader.next()) {
    if (reader.closing || !headerParts.includes(reader.name)) continue;
    const text = reader
      .text()
      .replace(/&(?:"[^"]*"|K[\dA-F]{6}|\d+|.)/gi, ' ')
      .replace(/\s+/g, ' ')
      .trim();
    if (text !== '') texts.push(text);
  }
  return texts;
}

function fillingColumns(xml: string): string[] {
  const reader = new XmlReader(xml);
  const found: string[] = [];
  let column = '';
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'tableColumn') column = reader.attribute('name') ?? '';
    else if (reader.name === 'calculatedColumnFormula' && callsUs(reader.text())) found.push(column);
  }
  return found;
}
