import { STAGES } from './course.ts';

/** What the colours, letters and marks of a timeline mean. */
export function TimelineLegend() {
  return (
    <p class="legend small">
      {STAGES.map(({ name, step, letter }) => (
        <span>
          <svg class="swatch" width="22" height="14" aria-hidden="true">
            <rect class={`fill ${step}`} x="1" y="1" width="20" height="12" />
            <text class={`on letter ${step}`} x="11" y="10.5">
              {letter}
            </text>
          </svg>{' '}
          {name}
        </span>
      ))}
      <span>
        <svg class="swatch" width="22" height="14" aria-hidden="true">
          <circle class="good" cx="11" cy="7" r="4.5" />
        </svg>{' '}
        young independent
      </span>
      <span>
        <svg class="swatch" width="22" height="14" aria-hidden="true">
          <text class="none" x="7" y="12">
            ×
          </text>
        </svg>{' '}
        over, no young
      </span>
      <span>
        <svg class="swatch" width="22" height="14" aria-hidden="true">
          <line class="foreseen" x1="1" x2="21" y1="7" y2="7" />
          <circle class="likely" cx="11" cy="7" r="2" />
        </svg>{' '}
        foreseen: hatching, leaving the nest, independence (the dot is the likeliest day)
      </span>
      <span>
        <svg class="swatch" width="22" height="14" aria-hidden="true">
          <line class="today" x1="11" x2="11" y1="0" y2="14" />
        </svg>{' '}
        the day stood on
      </span>
    </p>
  );
}
