import type { Workbook } from '../workbook';
import { XmlReader } from '../xml/reader';

/** What a reader of a workbook may find besides the cells that are shown, one sentence each. */
export function stays({ sheets, package: opened }: Workbook): string[] {
  const names = opened.archive.entries.map(({ name }) => name);
  const found: string[] = [];
  const say = (condition: boolean, sentence: string) => {
    if (condition) found.push(sentence);
  };
  const hidden = sheets.filter(({ visibility }) => visibility !== 'visible').map(({ name }) => name);
  say(hidden.length > 0, `Hidden sheets: ${hidden.join(', ')}.`);
  const rows = sheets.reduce((sum, { cells }) => sum + (cells?.hiddenRows.size ?? 0), 0);
  say(rows > 0, `${rows} hidden rows.`);
  say(
    names.some((name) => /\/(?:comments|threadedComment)[^/]*\.xml$/i.test(name)),
    'Comments.',
  );
  say(
    names.some((name) => /\/pivotCache\//i.test(name)),
    'Pivot tables, with the data they were made from.',
  );
  say(
    names.some((name) => /\/charts?\//i.test(name)),
    'Charts, with the numbers they show.',
  );
  say(
    names.some((name) => /\/(?:embeddings|media)\//i.test(name)),
    'Pictures or files inside the workbook.',
  );
  say(
    names.some((name) => /vbaProject\.bin$/i.test(name)),
    'Macros.',
  );
  const author = authorOf(opened.xml('docProps/core.xml'));
  say(author !== '', `The file's author: ${author}.`);
  return found;
}

function authorOf(xml: string | undefined): string {
  const reader = new XmlReader(xml ?? '');
  const people = new Set<string>();
  while (reader.next()) {
    if (!reader.closing && (reader.name === 'creator' || reader.name === 'lastModifiedBy'))
      people.add(reader.text());
  }
  people.delete('');
  return [...people].join(', ');
}
