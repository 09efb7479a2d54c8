import { wholeSizesRule } from '../html.js';

/** How a stock plan looks on the screen and on letter or A4, black on white. */
export const planStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
@page { margin: 9mm; }
body { font: 10pt/1.35 Arial, "Liberation Sans", Helvetica, sans-serif; color: #000; background: #fff; margin: 0; overflow-wrap: anywhere; }
main { width: 7.4in; max-width: 100%; margin: 0 auto; }
h1 { font-size: 17pt; margin: 0 0 2pt; } h2 { font-size: 13pt; margin: 0 0 3pt; border-bottom: 1.5pt solid #000; } h3 { font-size: 11pt; margin: 0 0 2pt; }
p { margin: 2pt 0; } ul { margin: 2pt 0; padding-left: 16pt; }
section { margin-top: 14pt; } .bar { margin: 9pt 0 0; break-inside: avoid; }
figure { margin: 0; } svg { display: block; max-width: 100%; font: 12px Arial, "Liberation Sans", Helvetica, sans-serif; }
table { border-collapse: collapse; margin: 2pt 0; } caption { text-align: left; font-weight: 700; padding: 4pt 0 2pt; }
th, td { text-align: left; vertical-align: top; padding: 1pt 10pt 1pt 0; border-bottom: 0.75pt solid #000; }
th, td { overflow-wrap: break-word; } th { font-size: 8.5pt; } td.number, th.number { text-align: right; }
thead { display: table-header-group; } tr { break-inside: avoid; } h2, h3 { break-after: avoid; }
.near { border: 1.5pt solid #000; padding: 2pt 6pt; font-weight: 700; }
.foot { margin-top: 12pt; border-top: 0.75pt solid #000; padding-top: 2pt; font-size: 8pt; }
${wholeSizesRule}
@media screen { body { padding: 8px; } .scroll { overflow-x: auto; } }
`;
