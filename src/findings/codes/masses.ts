import type { FindingKind } from '../codes.ts';
import type { FindingArgs } from '../finding.ts';

/** What the scales or the calliper cannot have shown. */
export const massCodes = {
  'doubtful-weight': {
    level: 'hint',
    text: ({ who, grams, of, low, high }) =>
      `${who} at ${grams} g: ${usual(low, high)} (${of}); this weight is compared with nothing`,
    hint: ({ mended, who }) =>
      mended === ''
        ? 'another bird or egg, or a slip of the pen? Grams, with a decimal point: 4.5'
        : `a decimal point? \`weighed: {${who}: ${mended}}\``,
  },
  'doubtful-egg-size': {
    level: 'hint',
    text: ({ who, length, breadth, grams, of, low, high }) =>
      `${who} of ${length} x ${breadth} mm would weigh ${grams} g: ${usual(low, high)} (${of}); this size counts for nothing`,
    hint: ({ who, mended }) =>
      mended === ''
        ? 'length x breadth in mm, with a decimal point: 14.2 x 10.8'
        : `a decimal point? \`measured: {${who}: ${mended}}\``,
  },
} as const satisfies Record<string, FindingKind>;

type Figure = FindingArgs[string] | undefined;

function usual(low: Figure, high: Figure): string {
  return `${low === high ? `about ${low}` : `${low}–${high}`} g is usual`;
}
