// The dress of a printed sheet: square and quiet, rules instead of boxes, ink decides and colour
// helps. The wide day sheet turns its page on its side.

export const SHEET_STYLE = `
:root {
  --ink: #1d1a17; --soft: #544d45; --line: #cfc6b6; --sheet: #fbf8f1; --iron: #34302d;
  --oat: #e4d8bf; --steel: #2f5d73; --ember: #b93a0c; --ash: #d8d2c8; --canvas: #f3eee4;
  --slab: 'Bitter Variable', Bitter, Rockwell, Georgia, serif;
  --sans: 'Source Sans 3 Variable', 'Source Sans 3', 'Segoe UI', 'Liberation Sans', Arial, sans-serif;
}
* { box-sizing: border-box; }
html { background: var(--canvas); color: var(--ink); font: 11.5pt/1.42 var(--sans);
  font-variant-numeric: tabular-nums lining-nums; -webkit-text-size-adjust: 100%; }
body { margin: 0; }
.sheet { max-width: 190mm; margin: 0 auto; padding: 10mm 8mm 14mm; background: var(--sheet); }
.sheet.day-sheet, .sheet.hand-sheet { max-width: 277mm; }
.sheet + .sheet { margin-top: 8mm; break-before: page; }
header { border-bottom: 2.5px solid var(--ink); padding-bottom: 2.5mm; margin-bottom: 4mm; }
.eyebrow { margin: 0 0 1mm; color: var(--soft); }
h1, h2, .figures b, .placement { font-family: var(--slab); text-wrap: balance; }
h1 { font-size: 25pt; line-height: 1.1; margin: 0; font-weight: 750; letter-spacing: -0.01em; }
h2 { font-size: 13.5pt; line-height: 1.2; margin: 6.5mm 0 1.5mm; font-weight: 700; break-after: avoid; }
p { margin: 0 0 2mm; }
.lead { font-size: 13pt; line-height: 1.35; }
.flag { display: inline-block; vertical-align: middle; font: 700 11pt/1.2 var(--sans);
  letter-spacing: 0.02em; border: 2px solid var(--ink); padding: 1mm 2mm; margin-left: 1.5mm; }
.placement { margin: 3mm 0; }
.placement p { font-size: 25pt; line-height: 1.14; font-weight: 700; margin: 0 0 1mm; }
.figures { display: flex; flex-wrap: wrap; gap: 2mm 12mm; margin: 3mm 0; }
.figures p { margin: 0; }
.figures b { font-size: 40pt; line-height: 1; font-weight: 750; }
.figures span { font-size: 14pt; }
.dish-card .figures { gap: 4mm; }
.dish-card .figures p { flex: 1; max-width: 82mm; text-align: center; }
.figures small { display: block; font-size: 11pt; }
small { color: var(--soft); font-size: 0.92em; }
figure { margin: 3mm 0; break-inside: avoid; }
figure.narrow { display: none; }
figure svg { display: block; width: 100%; height: auto; }
.drawings { display: flex; gap: 4mm; align-items: flex-start; break-inside: avoid; }
.drawings figure { flex: 1; max-width: 82mm; margin: 1mm 0; }
.dish-card figure.wide { max-width: 168mm; }
figure:has(.drawing-turn) { max-width: 132mm; }
table { border-collapse: collapse; width: 100%; margin: 1mm 0 3mm; }
caption { text-align: left; color: var(--soft); padding-bottom: 1mm; }
th, td { text-align: left; vertical-align: top; padding: 1.15mm 3mm 1.15mm 0; border-bottom: 1px solid var(--line); }
thead th { border-bottom: 1.5px solid var(--ink); font-weight: 650; vertical-align: bottom; }
.number { text-align: right; }
.number + td:not(.number), .number + th:not(.number) { padding-left: 5mm; }
.provisions td:first-child { width: 30%; }
.number { white-space: nowrap; }
tr { break-inside: avoid; }
thead { display: table-header-group; }
.steps th { white-space: nowrap; font-weight: 700; width: 1%; padding-right: 4mm; }
.steps .clock { white-space: nowrap; width: 1%; padding-right: 5mm; }
.steps small { margin-left: 1.5mm; white-space: nowrap; }
.steps .who { width: 34mm; padding-right: 5mm; }
.steps .strong td, .steps .strong th { font-weight: 700; border-top: 1.5px solid var(--ink); }
.steps .strong small, .steps .strong .who { font-weight: 400; }
.facts { display: grid; grid-template-columns: max-content 1fr; margin: 1mm 0 3mm; }
.facts dt, .facts dd { break-inside: avoid; margin: 0; padding: 1mm 5mm 1mm 0; border-bottom: 1px solid var(--line); }
.facts dt { color: var(--soft); }
.facts dd { font-weight: 600; padding-right: 0; }
.facts small { font-weight: 400; }
ul { margin: 1mm 0 3mm; padding-left: 5mm; }
.ticks { list-style: none; padding-left: 0; }
.ticks li { padding: 0.6mm 0 0.6mm 7mm; position: relative; break-inside: avoid; }
.ticks li::before { content: ''; position: absolute; left: 0; top: 1.7mm; width: 3.4mm; height: 3.4mm;
  border: 1.4px solid var(--ink); }
.notice { border-left: 3px solid var(--line); padding: 0.5mm 0 0.5mm 3mm; break-inside: avoid; }
.notice.doubt { border-left-style: dashed; border-left-color: var(--ink); }
.notice.stop, .notice.danger { border-left: 7px solid var(--ink); font-weight: 600; }
.notice.danger { border: 2.5px solid var(--ink); border-left-width: 10px; padding: 1.5mm 3mm; }
.notice b { text-transform: uppercase; letter-spacing: 0.05em; font-size: 0.85em; margin-right: 1mm; }
.notice.note b { color: var(--soft); }
.strip { list-style: none; margin: 5mm 0 3mm; padding: 2mm 3mm; border: 2.5px solid var(--ink); break-inside: avoid; }
.strip li { padding: 0.5mm 0; }
.strip li:first-child { font-weight: 700; }
details { border-top: 1.5px solid var(--ink); margin: 5mm 0 3mm; padding-top: 2mm; }
summary { font: 700 13.5pt/1.2 var(--slab); margin-bottom: 1.5mm; list-style: none; }
summary::-webkit-details-marker { display: none; }
.card { border: 1.5px solid var(--ink); padding: 3mm 4mm 2mm; margin: 0 0 4mm; break-inside: avoid; }
.card h2 { margin-top: 0; }
.page-break { break-after: page; }
.fire-chief td, .hand-columns td { white-space: pre-line; }
.hand-columns table { table-layout: fixed; }
.hand-columns :is(th, td):first-child { width: 17mm; font-weight: 700; }
.fire-chief td:nth-child(2) { white-space: pre; }
.fire-chief td:first-child { font-weight: 700; white-space: nowrap; }
.fire-chief td:nth-child(6) { font: 700 13pt/1.2 var(--slab); }
.wall-list table:not(.steps) { font-size: 13pt; }
.wall-list .steps { font-size: 15pt; line-height: 1.25; }
.wall-list .steps th { font-family: var(--slab); min-width: 24mm; }
.wall-list .steps .who { width: 46mm; color: var(--soft); font-size: 12.5pt; padding-top: 1.9mm; }
.pocket-cards { max-width: 210mm; }
.shopping td:first-child { padding-left: 6mm; position: relative; width: 30%; }
.shopping td:first-child::before { content: ''; position: absolute; left: 0; top: 1.7mm; width: 3.2mm; height: 3.2mm;
  border: 1.3px solid var(--ink); }
:is(.label-grid-letter, .label-grid-a4) .card p { margin: 0 0 0.7mm; font-size: 0.86em; line-height: 1.2; }
.label-grid-letter .card { max-width: 4in; }
.label-grid-a4 .card { max-width: 99mm; }
.pocket-cards .card p { margin: 1.5mm 0 0; font-weight: 600; }
/* Room for a pencil: rows of the log are as high as a line of handwriting. */
.safety-log td { padding-top: 2.2mm; padding-bottom: 2.2mm; }
.safety-log td:nth-child(n + 5) { white-space: nowrap; }
.allergen-cards > .card { font-size: 13pt; }
@media screen and (max-width: 640px) {
  .fire-chief table, .hand-columns table { display: block; overflow-x: auto; }
  :is(.fire-chief, .hand-columns) td { min-width: 30mm; }
  :is(.fire-chief, .hand-columns) :is(td:first-child, .number) { min-width: 0; }
  .wall-list .steps .who { width: auto; font-size: 11pt; }
  html { font-size: 12pt; }
  .sheet { padding: 5mm 4mm 10mm; }
  .drawings { gap: 2mm; }
  .drawings figure { max-width: none; }
  figure.wide { overflow-x: auto; }
  .sheet.day-sheet { display: flex; flex-direction: column; }
  .sheet.day-sheet > * { min-width: 0; max-width: 100%; }
  .day-sheet figure.lanes { order: 1; }
  .day-sheet figure.lanes:not(.narrow) { display: none; }
  .day-sheet figure.lanes.narrow { display: block; max-width: 480px; }
  .facts { grid-template-columns: 1fr; }
  .facts dt { border: 0; padding-bottom: 0; }
}
@media screen and (max-width: 480px) {
  th, td, .steps th, .steps .clock, .steps .who { padding-right: 2mm; }
  .number + td:not(.number), .number + th:not(.number) { padding-left: 1mm; }
  .steps .who { width: auto; }
  .number, .steps small { white-space: normal; }
  .drawings { flex-direction: column; align-items: center; }
  .drawings figure { width: 100%; max-width: 320px; }
}
@media print {
  .on-screen { display: none; }
  @page { margin: 6.5mm 9mm 6mm; }
  @page wide { size: landscape; margin: 7mm 9mm; }
  html { background: none; font-size: 9pt; line-height: 1.23; }
  :root { --sheet: #fff; --line: #b9b2a6; --soft: #46403a; }
  .sheet { max-width: none; padding: 0; margin: 0; background: none; }
  .sheet + .sheet { margin-top: 0; }
  .sheet.day-sheet { page: wide; max-width: none; }
  header { border-bottom-width: 2px; padding-bottom: 1mm; margin-bottom: 2mm; }
  h1 { font-size: 21pt; }
  h2, summary { font-size: 11pt; margin: 0 0 0.8mm; }
  p { margin: 0 0 1.2mm; orphans: 2; widows: 2; }
  .eyebrow { margin: 0 0 0.5mm; }
  .lead { font-size: 11pt; margin-bottom: 1.5mm; }
  .flag { font-size: 9.5pt; padding: 0.6mm 1.6mm; }
  .notice { margin: 0 0 1.2mm; }
  .notice.danger { padding: 0.7mm 2mm; border-width: 1.8px; border-left-width: 7px; }
  .notice.stop { border-left-width: 5px; padding: 0 0 0 2mm; }
  .halves { column-count: 2; column-gap: 6mm; margin-top: 1mm; }
  .half { padding-bottom: 1.6mm; }
  .half:has(figure, .steps) { break-inside: avoid; }
  .half:has(.steps tr:nth-child(17)) { break-inside: auto; }
  .day-sheet .half, .hand-sheet .half, .fire-and-care .half { break-inside: auto; }
  .half table:not(.steps) { break-inside: avoid; }
  .dish-card .half table { break-inside: auto; }
  .half th, .half td { padding-right: 1.5mm; }
  .day-sheet h1 { font-size: 16pt; }
  .day-sheet .steps { line-height: 1.19; }
  h1 { text-wrap: wrap; }
  .day-sheet .eyebrow { float: right; }
  .day-sheet :is(th, td) { padding-top: 0.25mm; padding-bottom: 0.25mm; }
  .half > details { border: 0; margin: 0; padding: 0; }
  .laid { display: grid; grid-template-columns: 96mm 1fr; column-gap: 5mm; align-items: start;
    grid-template-rows: auto auto 1fr; }
  .laid > .figures, .laid > .drawings { grid-column: 1; }
  .laid > .figures { grid-row: 1; margin: 0; }
  .laid > .drawings { grid-row: 2 / 4; }
  .laid > .placement { grid-column: 2; grid-row: 1 / 3; margin: 1mm 0 2mm; }
  .laid > p { grid-column: 2; grid-row: 3; }
  .laid .figures p, .laid .drawings figure { max-width: 46mm; flex: 1 1 46mm; margin: 0; }
  .figures b { font-size: 34pt; }
  .laid .figures b { font-size: 30pt; }
  .laid .figures span { font-size: 9.5pt; white-space: nowrap; }
  .placement p { font-size: 21pt; line-height: 1.1; margin: 0 0 2.5mm; }
  figure, .dish-card figure.wide, figure:has(.drawing-turn) { margin: 0.5mm 0 1mm; max-width: none; }
  .half figure:has(.drawing-turn) { max-width: 70mm; }
  table, .facts, ul { margin: 0.3mm 0 1mm; }
  .half p { margin-bottom: 0.5mm; }
  th, td { padding: 0.26mm 2mm 0.26mm 0; }
  .facts dt, .facts dd { padding: 0.45mm 2.5mm 0.45mm 0; }
  .half .facts { display: block; }
  .half .facts :is(dt, dd) { display: inline; border: 0; padding: 0; }
  .half .facts dt::after { content: ': '; }
  .half .facts dd::after { content: ''; display: block; height: 0.3mm; margin-bottom: 0.3mm;
    border-bottom: 1px solid var(--line); }
  h1.long { font-size: 17pt; }
  .day-sheet figure.wide { max-width: 262mm; }
  figure.lanes svg { width: auto; max-width: 100%; max-height: 176mm; margin: 0 auto; }
  .facts dd { font-weight: 550; }
  .steps th { padding-right: 2.5mm; }
  .steps .clock { padding-right: 2.5mm; }
  .steps .who { width: 18mm; padding-right: 2mm; }
  .steps small { margin-left: 1mm; white-space: normal; }
  ul { padding-left: 4mm; }
  .ticks { padding-left: 0; }
  .ticks li { padding: 0.15mm 0 0.15mm 5mm; }
  .ticks li::before { width: 2.7mm; height: 2.7mm; top: 0.85mm; border-width: 1.1px; }
  .provisions table { table-layout: fixed; }
  .provisions table ~ table thead { display: none; }
  .provisions td:nth-child(1), .provisions th:nth-child(1) { width: 25%; }
  .provisions :is(td, th):is(:nth-child(2), :nth-child(3)) { width: 10%; }
  .provisions :is(td, th):nth-child(4) { width: 14%; }
  .provisions :is(td, th):nth-child(5) { width: 22%; }
  li { break-inside: avoid; }
  .strip { margin: 1mm 0 0; padding: 0.7mm 2.5mm; border-width: 2px;
    font-size: 8.5pt; line-height: 1.16; }
  .strip li { display: inline; padding: 0; }
  .strip li:first-child { display: block; }
  .strip li:nth-child(n + 3)::before { content: '\\2022'; padding: 0 1.5mm 0 1mm; }
  .card { padding: 2mm 3mm 1mm; margin: 0 0 2.5mm; }
  .wall-list .steps { font-size: 15pt; line-height: 1.2; }
  .wall-list .steps .who { width: 44mm; font-size: 11.5pt; padding-top: 1.1mm; }
  .wall-list :is(th, td) { padding-top: 0.7mm; padding-bottom: 0.7mm; }
  .fire-chief .laid { display: block; }
  .fire-chief .figures { display: flex; gap: 12mm; margin: 1mm 0 2mm; }
  .fire-chief .figures p { max-width: none; flex: none; }
  .fire-chief .figures b { font-size: 24pt; }
  .fire-chief :is(th, td) { padding-top: 0.8mm; padding-bottom: 0.8mm; }
  .shopping h2 { margin-top: 1.6mm; }
  .shopping table { table-layout: fixed; }
  .shopping :is(th, td):nth-child(1) { width: 30%; }
  .shopping :is(th, td):nth-child(2) { width: 20%; }
  .shopping :is(th, td):nth-child(3) { width: 25%; }
  .shopping table ~ table thead { display: none; }
  .shopping td:first-child { padding-left: 5mm; }
  .shopping td:first-child::before { top: 0.5mm; width: 2.7mm; height: 2.7mm; border-width: 1.1px; }
  .fuel-water-ice .laid { display: block; }
  .fuel-water-ice .figures { display: flex; gap: 12mm; margin: 1mm 0 2mm; }
  .fuel-water-ice .figures p { max-width: none; flex: none; }
  .fuel-water-ice .figures b { font-size: 24pt; }
  .boxes { columns: 2; column-gap: 6mm; }
  .boxes > :is(header, .lead, .notice, h2, table) { column-span: all; }
  .boxes .card .facts, .fuel-water-ice .card .facts { margin-bottom: 0; }
  .safety-log :is(th, td) { padding-top: 1.7mm; padding-bottom: 1.7mm; }
  .fire-card .half { break-inside: avoid; }
  .fire-card .facts :is(dt, dd) { line-height: 1.75; }
  .iron-and-ash, .water-and-wash { font-size: 10.5pt; }
  .allergen-cards { display: grid; grid-template-columns: 1fr 1fr; align-content: start; }
  .allergen-cards > :not(.card) { grid-column: 1 / -1; }
  .allergen-cards > .card { margin: 0; min-height: 54mm; padding: 4mm 5mm; border: 0.3mm dashed var(--ink); font-size: 12.5pt; }
  .allergen-cards > .card h2 { font-size: 17pt; }
  @page labels-letter { size: 8.5in 11in; margin: 0.49in 0.155in 0.3in; }
  @page labels-a4 { size: A4; margin: 13mm 4.6mm 9mm; }
  .sheet.label-grid-letter { page: labels-letter; display: grid; grid-template-columns: 4in 4in;
    column-gap: 0.19in; grid-auto-rows: 2in; }
  .sheet.label-grid-a4 { page: labels-a4; display: grid; grid-template-columns: 99.1mm 99.1mm;
    column-gap: 2.5mm; grid-auto-rows: 67.7mm; }
  :is(.label-grid-letter, .label-grid-a4) > :is(header, p) { display: none; }
  :is(.label-grid-letter, .label-grid-a4) .card { margin: 0; border: 0; padding: 2.5mm 4mm 0; overflow: hidden;
    max-width: none; font-size: 8.6pt; }
  .label-grid-a4 .card { font-size: 9.4pt; padding: 4mm 5mm 0; }
  :is(.label-grid-letter, .label-grid-a4) .card h2 { font-size: 11pt; margin: 0 0 0.6mm; }
  :is(.label-grid-letter, .label-grid-a4) .card p { margin: 0 0 0.5mm; line-height: 1.14; font-size: 1em; }
  .pocket-cards > header { display: none; }
  .pocket-cards { display: grid; grid-template-columns: 1fr 1fr; margin: -1mm 0 0; }
  /* A card grows before it cuts a word. */
  .pocket-cards .card { min-height: 131mm; margin: 0; border: 0.3mm dashed var(--soft);
    padding: 4mm 5mm; font-size: 10pt; }
  .pocket-cards .card h2 { font-size: 14pt; border-bottom: 2px solid var(--ink); padding-bottom: 0.6mm; }
  .pocket-cards .card .steps th { padding-right: 2mm; }
  .pocket-cards .card p { border-bottom: 1.5px solid var(--ink); padding-bottom: 0.8mm; font-size: 8.5pt; }
  svg, .flag, .notice, .strip { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
}
`;
