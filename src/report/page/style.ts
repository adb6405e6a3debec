/**
 * The look of every page: one column of text with figures and tables, light and dark by what the reader's device
 * prefers, black on white on A4 paper. Colours are named for what they are used for; what is told by a colour is told
 * by a letter, a form or a lightness as well, so that a grey print says the same.
 *
 * The five steps of a clutch are the five classes of the sequential scheme YlGnBu of ColorBrewer (Harrower & Brewer
 * 2003, The Cartographic Journal 40:27), which its authors mark as safe for colour-blind readers and in print; the
 * values are from memory. Text on paper keeps at least 4.5 : 1 of contrast, lines and marks 3 : 1 (WCAG 2.2, 1.4.3
 * and 1.4.11).
 */
export const STYLE = `
:root {
  color-scheme: light dark;
  --paper: #fffdf8; --raised: #f4f1e8; --ink: #1d1f21; --quiet: #5a5f66; --rule: #d5d0c2; --mark: #6f7680;
  --accent: #1f5f8b; --act: #9c2a1a; --watch: #7a5200;
  --step-1: #ffffcc; --step-2: #a1dab4; --step-3: #41b6c4; --step-4: #2c7fb8; --step-5: #253494;
  --on-step-1: #1d1f21; --on-step-2: #1d1f21; --on-step-3: #10202a; --on-step-4: #ffffff; --on-step-5: #ffffff;
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --paper: #16181a; --raised: #22262a; --ink: #ece9e1; --quiet: #a9adb3; --rule: #3b4046; --mark: #8d949c;
    --accent: #7db8dd; --act: #ff9c8a; --watch: #f0c060;
  }
}
* { box-sizing: border-box; }
html { background: var(--paper); }
body {
  margin: 0 auto; padding: 2rem 1.25rem 4rem; max-width: 60rem;
  font: 1rem/1.5 system-ui, "Segoe UI", Cantarell, "Noto Sans", "DejaVu Sans", sans-serif;
  color: var(--ink); background: var(--paper); overflow-wrap: anywhere;
}
h1, h2, h3 { line-height: 1.2; margin: 0 0 0.5rem; text-wrap: balance; break-after: avoid; }
h1 { font-size: 1.9rem; }
h2 { font-size: 1.25rem; margin-top: 2.25rem; padding-top: 0.6rem; border-top: 2px solid var(--ink); }
h3 { font-size: 1.05rem; margin-top: 1.5rem; }
p { margin: 0 0 0.75rem; max-width: 44rem; }
a { color: var(--accent); }
.quiet { color: var(--quiet); }
.small { font-size: 0.875rem; }
.lead { font-size: 1.15rem; }
figure { margin: 1rem 0 1.5rem; break-inside: avoid; }
figcaption { font-weight: 600; margin-bottom: 0.4rem; }
figcaption + p { margin-bottom: 0.4rem; }
svg { display: block; width: 100%; height: auto; overflow: visible; }
svg text { font: 12px system-ui, "Segoe UI", Cantarell, "Noto Sans", "DejaVu Sans", sans-serif; fill: var(--ink); }
svg .quiet { fill: var(--quiet); }
svg .rule { stroke: var(--rule); fill: none; }
svg .line { stroke: var(--accent); stroke-width: 2; fill: none; }
svg .band { fill: var(--accent); opacity: 0.22; }
svg .mark { fill: var(--accent); }
svg .outline { fill: none; stroke: var(--mark); }
.step-1 { --fill: var(--step-1); --on: var(--on-step-1); }
.step-2 { --fill: var(--step-2); --on: var(--on-step-2); }
.step-3 { --fill: var(--step-3); --on: var(--on-step-3); }
.step-4 { --fill: var(--step-4); --on: var(--on-step-4); }
.step-5 { --fill: var(--step-5); --on: var(--on-step-5); }
svg .fill { fill: var(--fill); stroke: var(--mark); stroke-width: 0.75; }
svg text.on { fill: var(--on); }
.table { position: relative; overflow-x: auto; margin: 0.75rem 0 1.25rem; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; font-size: 0.925rem; }
caption { text-align: left; font-weight: 600; padding-bottom: 0.3rem; }
th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.75rem 0.3rem 0; border-bottom: 1px solid var(--rule); }
thead th { border-bottom: 1px solid var(--ink); font-weight: 600; overflow-wrap: normal; }
thead td { border-bottom: 1px solid var(--ink); }
tbody th { font-weight: 500; }
th { overflow-wrap: normal; }
tbody th { overflow-wrap: anywhere; min-width: 7rem; }
table:not(.wide) td:not(.right) { min-width: 4.5rem; }
.right { text-align: right; }
td.right { white-space: nowrap; }
td.drawing, th.drawing { width: 34%; min-width: 7rem; padding-left: 0.5rem; }
.drawing:last-child { padding-right: 0; }
svg.strip { width: 100%; height: 18px; margin-top: 2px; }
.scale { display: grid; grid-template-columns: 1fr 1fr 1fr; font-weight: 400; color: var(--quiet); text-align: center; white-space: nowrap; }
.scale :first-child { text-align: left; }
.scale :last-child { text-align: right; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
tr { break-inside: avoid; }
details { margin: 0.4rem 0 0; }
summary { color: var(--quiet); font-size: 0.875rem; cursor: pointer; }
footer { margin-top: 3rem; padding-top: 0.6rem; border-top: 1px solid var(--rule); color: var(--quiet); font-size: 0.875rem; }
@media screen and (max-width: 40rem) {
  body { padding: 1rem 0.9rem 3rem; }
  table.wide { font-size: 0.75rem; }
  /* A table that has no room is pushed aside with a finger; words stay whole. */
  .table td, .table tbody th { overflow-wrap: break-word; }
  tbody th { min-width: 5.4rem; }
  table.wide .drawing { display: none; }
  th, td { padding-right: 0.5rem; }
  table:not(.wide) td:not(.right) { min-width: 3rem; }
}
@page { size: A4; margin: 16mm 14mm 18mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 10pt; }
  h1 { font-size: 20pt; }
  h2 { font-size: 13pt; margin-top: 7mm; }
  .table { overflow: visible; }
  table { font-size: 9pt; }
  thead { display: table-header-group; }
  details:not([open]) { display: none; }
  a { color: inherit; text-decoration: none; }
}
`;
