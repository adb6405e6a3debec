/** What the page of a season adds to the common style. */
export const SEASON_STYLE = `
td.drawing, th.drawing { width: 34%; min-width: 8.5rem; padding-right: 0; }
svg.strip { width: 100%; height: 18px; overflow: visible; }
.scale { display: flex; justify-content: space-between; font-weight: 400; color: var(--quiet); }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.counts { display: block; font-size: 0.8em; }
.beside { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2.5rem; }
svg.plot { overflow: hidden; }
svg .plot path { vector-effect: non-scaling-stroke; }
svg .danger { fill: var(--watch); opacity: 0.16; }
svg text.tick { font-size: 11px; fill: var(--quiet); paint-order: stroke; stroke: var(--paper); stroke-width: 3px; }
svg text.middle { text-anchor: middle; }
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
.panel dl div { display: grid; grid-template-columns: 5.6rem 1fr; align-items: center; }
.panel dt { font-size: 0.8rem; color: var(--quiet); }
.panel dd { margin: 0; display: grid; grid-template-columns: 1.8rem 1fr; align-items: center; font-variant-numeric: tabular-nums; font-size: 0.875rem; }
.panel p { margin: 0 0 0.3rem; line-height: 1.35; }
.panel svg.strip { height: 14px; }
@media screen and (max-width: 40rem) {
  .beside { grid-template-columns: 1fr; }
  .timeline th:nth-child(1) { width: 3.6rem; }
  .timeline .species { display: none; }
}
@media print {
  .timeline th:nth-child(1) { width: 44mm; }
  .fold:not([open]) { display: block; }
  .panels { grid-template-columns: repeat(3, 1fr); gap: 4mm 7mm; }
}
`;
