/** What the page of a season adds to the common style. */
export const SEASON_STYLE = `
.bars .drawing { width: 72%; }
.groups .drawing { width: 26%; }
.beside .drawing { width: 45%; }
.counts { display: block; font-size: 0.8em; }
.beside { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2.5rem; }
svg.plot { overflow: hidden; }
svg .plot path { vector-effect: non-scaling-stroke; }
svg .danger { fill: var(--watch); opacity: 0.16; }
svg text.tick { font-size: 11px; fill: var(--quiet); paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
svg text.middle { text-anchor: middle; }
svg text.end { text-anchor: end; }
.notes dt { font-weight: 600; }
.notes dd { margin: 0 0 0.5rem; max-width: 44rem; }
.fold { border-top: 1px solid var(--rule); padding: 0.35rem 0; }
.fold > summary { font-size: 1rem; color: var(--ink); }
.timeline th:nth-child(1) { width: 14rem; }
.panels { display: grid; grid-template-columns: repeat(auto-fill, minmax(13.5rem, 1fr)); gap: 1rem 1.75rem; }
.panel { break-inside: avoid; border-top: 1px solid var(--rule); padding-top: 0.4rem; min-width: 0; }
.panel h3 { margin: 0 0 0.3rem; font-size: 1rem; }
.panel h3 .quiet { font-weight: 400; font-size: 0.875rem; }
.panel dl { margin: 0 0 0.3rem; }
.panel dl div { display: grid; grid-template-columns: 6rem 1fr; align-items: center; }
.panel dt { padding-right: 0.5rem; font-size: 0.8rem; color: var(--quiet); }
.panel dd { margin: 0; display: grid; grid-template-columns: 1.8rem 1fr; align-items: center; font-variant-numeric: tabular-nums; font-size: 0.875rem; }
.panel p { margin: 0 0 0.3rem; line-height: 1.35; }
.panel svg.strip { height: 14px; margin: 0; }
.panel svg.lane { margin: 0.2rem 0; }
@media screen and (max-width: 40rem) {
  .beside { grid-template-columns: 1fr; }
  .timeline th:nth-child(1) { width: 3.6rem; }
  .timeline .species, .groups :is(th, td):nth-child(3) { display: none; }
  .groups :is(th, td) { padding-right: 0.35rem; }
}
@media print {
  html { font-size: 10pt; }
  table:not(.timeline) :is(th, td) { padding-top: 0.15rem; padding-bottom: 0.15rem; line-height: 1.3; }
  .table { margin: 0.3rem 0 0.5rem; }
  h2 { margin-top: 5mm; padding-top: 0.35rem; margin-bottom: 0.3rem; }
  figure { margin: 0.4rem 0 0.6rem; }
  svg.strip { height: 13px; }
  p { margin-bottom: 0.45rem; }
  .timeline th:nth-child(1) { width: 44mm; }
  .fold:not([open]) { display: block; }
  .panels { grid-template-columns: repeat(3, 1fr); gap: 4mm 7mm; }
}
`;
