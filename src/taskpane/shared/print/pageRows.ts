/** A printable page as rows of a sheet: a row for each heading, paragraph, entry and row of a table; texts only, no drawings. */
export function pageRows(page: string): string[][] {
  const { body } = new DOMParser().parseFromString(page, 'text/html');
  return rowsOf(body).filter((row, at, all) => row.length > 0 || (all[at - 1]?.length ?? 0) > 0);
}

const blank: string[] = [];

function rowsOf(element: Element): string[][] {
  return [...element.children].flatMap((child): string[][] => {
    const name = child.tagName.toLowerCase();
    if (name === 'table') return [...[...child.querySelectorAll('tr:not(.drawing)')].map(cellsOf), blank];
    if (/^h[1-6]$/.test(name)) return [blank, [textOf(child)]];
    if (name === 'ul' || name === 'ol') return [...child.children].map((entry) => [textOf(entry)]);
    if (name === 'dl')
      return [...child.querySelectorAll('dt')].map((term) => [textOf(term), textOf(term.nextElementSibling)]);
    if (['script', 'style', 'svg'].includes(name)) return [];
    const hasBlocks = child.querySelector('table, p, ul, ol, dl, h1, h2, h3, h4, div, section') !== null;
    if (hasBlocks) return rowsOf(child);
    const text = textOf(child);
    return text === '' ? [] : [[text]];
  });
}

const cellsOf = (row: Element) => [...row.children].map(textOf);

const textOf = (element: Element | null) => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
