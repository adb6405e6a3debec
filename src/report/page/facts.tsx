/** Rules for lists of facts. */
export const FACTS_STYLE = `
.facts { display: grid; grid-template-columns: max-content 1fr; gap: 0.25rem 1rem; margin: 0 0 1rem; }
.facts dt { color: var(--quiet); white-space: nowrap; }
.facts dd { margin: 0; }
@media (max-width: 30rem) { .facts { grid-template-columns: 1fr; gap: 0; } .facts dd { margin-bottom: 0.5rem; } }
@media print { .facts dt, .facts dd { break-inside: avoid; } }
`;

/** Facts or days, each with what it is of. Nothing without any. */
export function Facts({ items }: { items: readonly { of: string; text: string }[] }) {
  if (items.length === 0) return null;
  return (
    <dl class="facts">
      {items.map(({ of, text }) => (
        <>
          <dt>{of}</dt>
          <dd>{text}</dd>
        </>
      ))}
    </dl>
  );
}
