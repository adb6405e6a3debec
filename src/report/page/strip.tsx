import { scaleLinear } from 'd3-scale';
import { ofWidth } from './timeline/months.tsx';

/**
 * Small drawings for the cells of a table that says the same in figures, so that they need no words of their own. They
 * are as wide as their cell: places are shares of it.
 */

interface BarParts {
  /** Of the longest. */
  share: number;
  /** Which of the common five colours. */
  step: 1 | 2 | 3 | 4 | 5;
}

/** Per cent of the cell: the longest bar leaves room for its right edge, which a table that can be scrolled would cut off. */
const WHOLE = 99.7;

/** A bar from the left. What is not nothing shows at least a sliver. */
export function Bar({ share, step }: BarParts) {
  const width = Math.min(WHOLE, Math.max(share > 0 ? 0.6 : 0, share * WHOLE));
  return (
    <svg class="strip" aria-hidden="true">
      <line class="rule" x1="0" x2="0" y1="0" y2="100%" />
      {width === 0 ? null : (
        <rect class={`fill step-${step}`} x="0" y="8%" height="84%" width={ofWidth(width)} />
      )}
    </svg>
  );
}

interface WhiskerParts {
  /** The ends of the interval and the figure itself; nothing is drawn where there is none. */
  low: number | null;
  at: number | null;
  high: number | null;
  scale?: Scale;
}

/** What a whisker's cell goes from and to, and where lines stand in it. */
export interface Scale {
  from: number;
  to: number;
  lines: readonly { at: number; says: string }[];
}

export const SHARES: Scale = {
  from: 0,
  to: 1,
  lines: [
    { at: 0, says: '0' },
    { at: 0.5, says: '50 %' },
    { at: 1, says: '100 %' },
  ],
};

export const DIFFERENCES: Scale = {
  from: -1,
  to: 1,
  lines: [
    { at: -1, says: '−100' },
    { at: 0, says: '0' },
    { at: 1, says: '+100 points' },
  ],
};

/** A dot on the line of its interval. */
export function Whisker({ low, at, high, scale = SHARES }: WhiskerParts) {
  const place = placeOn(scale);
  const [from, to] = [low ?? at, high ?? at];
  return (
    <svg class="strip" aria-hidden="true">
      {scale.lines.map((line) => (
        <line class="rule" x1={place(line.at)} x2={place(line.at)} y1="0" y2="100%" />
      ))}
      {at === null || from === null || to === null ? null : (
        <>
          <line class="line" x1={place(from)} x2={place(to)} y1="50%" y2="50%" />
          <line class="line" x1={place(from)} x2={place(from)} y1="28%" y2="72%" />
          <line class="line" x1={place(to)} x2={place(to)} y1="28%" y2="72%" />
          <circle class="mark" cx={place(at)} cy="50%" r="4" />
        </>
      )}
    </svg>
  );
}

/** The head of a column of whiskers: what its lines stand for. */
export function ScaleHead({ scale = SHARES }: { scale?: Scale }) {
  return (
    <span class="scale">
      {scale.lines.map(({ says }) => (
        <span>{says}</span>
      ))}
    </span>
  );
}

/** A twentieth is left at both sides, so that a dot at the end is whole. */
function placeOn({ from, to }: Scale): (value: number) => string {
  const place = scaleLinear([from, to], [3, 97]).clamp(true);
  return (value) => ofWidth(place(value));
}

/** The head of a column of bars: read out, not shown. */
export function UnseenHead({ says }: { says: string }) {
  return <span class="unseen">{says}</span>;
}
