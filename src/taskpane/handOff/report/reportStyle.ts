/** How a report looks on the screen and on paper. */
export const reportStyle = `
:root { color-scheme: light; }
body { font: 11pt/1.4 system-ui, sans-serif; color: #000; background: #fff; margin: 16px; }
h1 { font-size: 17pt; margin: 0 0 2pt; } h2 { font-size: 12.5pt; margin: 14pt 0 4pt; }
p { margin: 3pt 0; } ul { margin: 3pt 0; padding-left: 16pt; }
table { border-collapse: collapse; width: 100%; } th { white-space: nowrap; } th, td { text-align: left; vertical-align: top; padding: 2pt 8pt 2pt 0; border-bottom: 0.75pt solid #767676; overflow-wrap: anywhere; }
td.number, th.number { text-align: right; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 1pt 12pt; margin: 3pt 0; } dt { font-weight: 600; } dd { margin: 0; }
.mark { font-weight: 600; } .notice { border: 1.5pt solid #000; padding: 4pt 8pt; }
.scroll { overflow-x: auto; }
@page { margin: 1.5cm; }
@media print { body { margin: 0; } .next { break-before: page; } tr { break-inside: avoid; } thead { display: table-header-group; } h2 { break-after: avoid; } .scroll { overflow: visible; } }
`;
