import { wholeSizesRule } from '../../../print/html.js';
import type { ReportJob } from './reportData.js';

const rules = `
:root { color-scheme: light; }
body { font: 10pt/1.3 system-ui, sans-serif; color: #000; background: #fff; margin: 16px; }
h1 { font-size: 16pt; margin: 0 0 2pt; } h2 { font-size: 12pt; margin: 8pt 0 2pt; }
p { margin: 3pt 0; }
table { border-collapse: collapse; width: 100%; } th { white-space: nowrap; } th, td { text-align: left; vertical-align: top; padding: 1.5pt 7pt 1.5pt 0; border-bottom: 0.75pt solid #767676; overflow-wrap: anywhere; }
td.number, th.number { text-align: right; white-space: nowrap; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 1pt 12pt; margin: 3pt 0; } dt { font-weight: 600; } dd { margin: 0; overflow-wrap: anywhere; }
.head { grid-template-columns: max-content 1fr max-content 1fr; }
.beside { display: grid; grid-template-columns: repeat(auto-fit, minmax(240px, 1fr)); gap: 0 24pt; }
.mark { font-weight: 600; } .piece { min-width: 8.5em; } .word { white-space: nowrap; } .notice { border: 1.5pt solid #000; padding: 4pt 8pt; }
[aria-label='Assumptions'] th:first-child { width: 55%; } [aria-label='Assumptions'] th:last-child { width: 36%; } .beside td, .beside th { padding-block: 0.5pt; }
.scroll { overflow-x: auto; }
tbody:has(.drawing) tr:first-child td { border-bottom: 0; } figure { margin: 2pt 0 4pt; } figure svg { max-width: 100%; height: auto; font: 12px system-ui, sans-serif; }
figcaption { font-size: 9.5pt; }
${wholeSizesRule}
@media (max-width: 480px) { .head { grid-template-columns: max-content 1fr; } }
@media print { body { margin: 0; } .next { break-before: page; } tr, tbody:has(.drawing), figure, .notice { break-inside: avoid; } thead { display: table-header-group; } h2 { break-after: avoid; } .scroll { overflow: visible; } }
`;

/** How a report looks on the screen and on paper, with its head and its page numbers on every sheet. */
export function reportStyle({ job, customer, file, date }: ReportJob, stamp: string): string {
  const box = (at: string, content: string) =>
    `@${at} { content: ${content}; font: 8.5pt system-ui, sans-serif; }`;
  const named = [job, customer].filter((text) => text !== '').join(' · ');
  return `${rules}@page { margin: 1.7cm 1.5cm;
${box('top-left', cssText(named))}
${box('top-right', cssText(file))}
${box('bottom-left', cssText(`${date} · ${stamp}`))}
${box('bottom-right', '"Page " counter(page) " of " counter(pages)')}
}
`;
}

const longestHead = 70;

/** Text of the user as a text of a style sheet: nothing in it can end the text or the sheet. */
function cssText(text: string): string {
  const short = text.length > longestHead ? `${text.slice(0, longestHead - 1)}…` : text;
  const letters = Array.from(short, (letter) =>
    /[\w .,-]/.test(letter) ? letter : `\\${letter.codePointAt(0)?.toString(16)} `,
  );
  return `"${letters.join('')}"`;
}
