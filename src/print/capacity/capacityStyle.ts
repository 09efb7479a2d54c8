/** How a capacity sheet looks on the screen and on paper: one page of letter or A4, black on white; no row is split. */
export const capacityStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
@page { margin: 11mm; }
body { font: 9pt/1.25 Arial, "Liberation Sans", Helvetica, sans-serif; color: #000; background: #fff; margin: 0; }
main { max-width: 7.4in; margin: 0 auto; }
h1 { font-size: 17pt; margin: 0 0 2pt; overflow-wrap: anywhere; }
p { margin: 0 0 4pt; }
.notice { border: 2pt solid #000; padding: 3pt 6pt; font-size: 12pt; font-weight: 700; }
dl { display: flex; flex-wrap: wrap; gap: 1pt 14pt; margin: 0 0 4pt; } dl div { display: flex; gap: 4pt; } dd { margin: 0; font-weight: 700; }
table { border-collapse: collapse; width: 100%; margin: 0 0 6pt; break-inside: avoid; }
caption { text-align: left; font-weight: 700; font-size: 10pt; padding: 2pt 0 1pt; }
th, td { text-align: left; padding: 1pt 8pt 1pt 0; border-bottom: 0.75pt solid #000; white-space: nowrap; }
thead th { font-weight: 400; border-bottom: 1.5pt solid #000; } tbody th { font-weight: 700; }
tr { break-inside: avoid; } thead { display: table-header-group; }
@media screen { body { padding: 8px; } }
@media screen and (max-width: 600px) { th, td { white-space: normal; } }
.foot { font-size: 8pt; border-top: 0.75pt solid #000; padding-top: 2pt; margin: 0; }
`;
