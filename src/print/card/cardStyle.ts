import { wholeSizesRule } from '../html.js';

/** How cards look on the screen and on paper: two on a sheet of letter or A4, black on white. */
export const cardStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
@page { margin: 9mm; }
body { font: 9.5pt/1.28 Arial, "Liberation Sans", Helvetica, sans-serif; color: #000; background: #fff; margin: 0; }
.sheet { width: 7.4in; margin: 0 auto; break-after: page; }
.sheet:last-child { break-after: auto; }
.card { display: flex; flex-direction: column; gap: 4px; min-height: 5.05in; break-inside: avoid; padding: 7px 10px 5px; border: 1.5pt solid #000; }
.card + .card { margin-top: 0.12in; }
.card.whole { min-height: 10.22in; break-inside: auto; }
.head { display: flex; align-items: baseline; gap: 14px; border-bottom: 1.5pt solid #000; padding-bottom: 3px; }
.mark { font-size: 24pt; line-height: 1; font-weight: 700; overflow-wrap: anywhere; }
.qty { font-size: 17pt; line-height: 1; font-weight: 700; white-space: nowrap; }
.piece { font-size: 13pt; line-height: 1.1; font-weight: 700; overflow-wrap: anywhere; }
.verdict { margin-left: auto; font-size: 13pt; font-weight: 700; white-space: nowrap; border: 1.5pt solid #000; padding: 1px 6px; }
.facts { display: flex; flex-wrap: wrap; gap: 1px 14px; margin: 0; }
.facts div { display: flex; gap: 4px; } .facts dt { font-weight: 400; } .facts dd { margin: 0; font-weight: 700; overflow-wrap: anywhere; }
.drawings { display: flex; align-items: flex-end; gap: 6px; }
figure { margin: 0 0 6px; break-inside: avoid; } figcaption { font-size: 9pt; font-weight: 700; }
svg { display: block; font: 12px Arial, "Liberation Sans", Helvetica, sans-serif; }
p { margin: 0; } .said { font-size: 9pt; } .near { border: 1.5pt solid #000; padding: 1px 6px; font-weight: 700; }
.flow { columns: 2; column-gap: 18px; }
.steps { margin: 0; padding: 0; list-style: none; font-size: 9pt; line-height: 15px; }
.steps li { break-inside: avoid; padding-left: 20px; text-indent: -20px; overflow-wrap: anywhere; }
.steps b.no { display: inline-block; width: 15px; height: 15px; margin-right: 5px; border: 0.9pt solid #000; border-radius: 50%; text-align: center; text-indent: 0; font-size: 8.5pt; line-height: 13px; }
.steps b.at { display: inline-block; width: 15px; margin-right: 5px; text-align: right; text-indent: 0; }
.reasons { margin: 0; padding-left: 16px; font-size: 11pt; overflow-wrap: anywhere; }
.foot { margin-top: auto; border-top: 0.75pt solid #000; padding-top: 2px; font-size: 7.5pt; line-height: 1.2; }
.foot b { font-size: 8pt; } .stamp { white-space: nowrap; font-weight: 700; }
table { border-collapse: collapse; width: 100%; font-size: 11pt; } caption { text-align: left; font-weight: 700; padding: 6pt 0 2pt; }
th, td { text-align: left; vertical-align: top; padding: 1.5pt 12pt 1.5pt 0; border-bottom: 0.75pt solid #000; } td:last-child { overflow-wrap: anywhere; width: 40%; } tbody th { padding-top: 6pt; } tbody { break-inside: avoid; }
td.number, th.number { text-align: right; } thead { display: table-header-group; } tr { break-inside: avoid; }
h1 { font-size: 17pt; margin: 0 0 3pt; overflow-wrap: anywhere; }
${wholeSizesRule}
@media screen { .sheet { margin-bottom: 16px; } }
@media screen and (max-width: 700px) { .sheet { width: auto; } .head { flex-wrap: wrap; } .drawings { flex-wrap: wrap; } .flow { columns: 1; } svg { max-width: 100%; height: auto; } }
`;
