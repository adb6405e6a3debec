/**
 * A tick list: rows that a thumb finds (48 px and more; WCAG 2.2, 2.5.8 asks for 24), boxes that stay boxes on paper,
 * and at its end lines to write on, which a screen does not need.
 */
export const DUE_STYLE = `
h2 { margin-top: 1.5rem; }
.lead { font-weight: 600; }
.broken { border-left: 4px solid var(--act); padding-left: 0.75rem; }
.ticks { list-style: none; margin: 0; padding: 0; }
.ticks li { border-bottom: 1px solid var(--rule); break-inside: avoid; }
.ticks label {
  display: grid; grid-template-columns: 1.9rem 6.5rem 1fr; column-gap: 0.75rem; align-items: baseline;
  padding: 0.55rem 0; min-height: 3rem; cursor: pointer;
}
.ticks input { width: 1.6rem; height: 1.6rem; margin: 0; grid-row: 1 / span 2; align-self: start; accent-color: var(--accent); }
.when { font-weight: 600; font-variant-numeric: tabular-nums; }
.what { font-size: 1.1rem; line-height: 1.35; }
.whose { display: inline-block; max-width: 100%; }
.why { grid-column: 3; color: var(--quiet); font-size: 0.9rem; line-height: 1.4; }
.late .when, .act .when { color: var(--act); }
.watch .when { color: var(--watch); }
.coming .what { font-size: 1rem; }
.coming .when { font-weight: 400; }
.coming strong { font-weight: 500; }
.warnings .why { color: var(--ink); }
/* A line through the words around it is not drawn through a code that is kept whole. */
.ticks li:has(input:checked) :is(.what, .why, .whose, .whole) { text-decoration: line-through; color: var(--quiet); }
.notes { display: none; }
@media (max-width: 34rem) {
  body { padding: 1rem 0.9rem 3rem; }
  .ticks label { grid-template-columns: 2.2rem 1fr; }
  .ticks input { width: 2rem; height: 2rem; grid-row: 1 / span 3; }
  .when, .what, .why { grid-column: 2; }
}
@media print {
  h1 { font-size: 16pt; }
  .lead { font-size: 11pt; }
  h2 { font-size: 11pt; margin-top: 4mm; padding-top: 1mm; border-top-width: 1px; }
  .walk { columns: 2; column-gap: 7mm; margin-top: 5mm; }
  .walk h2:first-child { margin-top: 0; }
  .walk section { margin-bottom: 4mm; }
  .ticks label { padding: 1.2mm 0; min-height: 0; grid-template-columns: 5mm 1fr auto; column-gap: 1.5mm; }
  .what { grid-area: 1 / 2; }
  .when { grid-area: 1 / 3; font-size: 9pt; white-space: nowrap; }
  .why { grid-area: 2 / 2 / auto / span 2; }
  .ticks input {
    appearance: none; width: 4.5mm; height: 4.5mm; border: 0.4mm solid #000; border-radius: 0.5mm; background: none;
  }
  .what, .coming .what { font-size: 9.5pt; }
  .why { font-size: 8pt; line-height: 1.3; }
  .ticks li:has(input:checked) :is(.what, .why, .whose, .whole) { text-decoration: none; color: inherit; }
  .notes {
    display: block; margin-top: 8mm; height: 52mm; break-inside: avoid;
    background: repeating-linear-gradient(transparent 0 7.7mm, #999 7.7mm 8mm); print-color-adjust: exact;
  }
  .notes p { font-size: 8.5pt; background: #fff; width: fit-content; padding-right: 2mm; }
}
`;
