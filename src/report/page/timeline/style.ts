/** What a page with a timeline adds to its style. */
export const TIMELINE_STYLE = `
.timeline { table-layout: fixed; font-size: 0.8rem; }
.timeline th, .timeline td { padding: 0 0.3rem 0 0; border-bottom: 0; line-height: 22px; height: 22px; overflow: hidden; white-space: nowrap; text-overflow: ellipsis; }
.timeline th:nth-child(1) { width: 5.5rem; }
.timeline th:nth-child(2) { width: 2.2rem; }
.timeline .number { width: 3.6rem; }
.timeline thead th { border-bottom: 1px solid var(--ink); overflow: visible; }
.timeline tbody tr:not(.same) > * { border-top: 1px solid var(--rule); }
.timeline .course { padding: 0; }
svg.lane { width: 100%; height: 22px; overflow: visible; }
thead svg.lane { height: 28px; }
.timeline thead th { vertical-align: bottom; }
svg.swatch { display: inline-block; width: 22px; height: 14px; vertical-align: -2px; }
svg text.month, svg text.letter { font-size: 10px; font-weight: 400; }
svg text.letter { text-anchor: middle; }
svg text.none { font-size: 15px; font-weight: 700; }
/* Drawn again by reference in every lane, where a selector may not reach out of what is referred to. */
.month-line { stroke: var(--rule); }
.today { stroke: var(--act); stroke-width: 1.5; stroke-dasharray: 3 2; }
svg .foreseen { stroke: var(--quiet); stroke-width: 1.5; }
svg .likely { fill: var(--quiet); }
svg .good { fill: var(--ink); stroke: var(--paper); }
.legend { break-after: avoid; display: flex; flex-wrap: wrap; gap: 0.2rem 1.1rem; max-width: none; }
@media screen and (max-width: 40rem) {
  .timeline .number, svg text.odd { display: none; }
  .timeline th:nth-child(1) { width: 3.6rem; }
  .timeline th:nth-child(2) { width: 1.4rem; }
}
@media print {
  .timeline { font-size: 8pt; }
  .timeline th:nth-child(1) { width: 20mm; }
  .timeline .number { width: 13mm; }
}
`;
