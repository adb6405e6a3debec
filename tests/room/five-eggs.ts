import { room } from '../rooms.ts';
import { clutchIn, codes, fates, waxbills } from './facts.ts';

/** Five eggs that are sat on. */
export const five = `
  date: 2026-03-01, paired
  date: 2026-03-05, laid: 5, sitting
`;
/** Their chicks. */
export const chicks = `${five}
  date: 2026-03-18, hatched: [e1, e2, e3, e4, e5]
`;

/** How the eggs of one clutch of five ended, and what was found doubtful. */
export function eggs(more: string): { fates: string[]; codes: string[] } {
  const known = room({ P: waxbills(`${five}\n${more}`) }, '2026-04-20');
  return { fates: fates(clutchIn(known, 'LW-1/1')), codes: codes(known) };
}

/** Which of five chicks are dead, and what was found doubtful. */
export function dead(who: string, files = {}): { dead: (string | null)[]; codes: string[] } {
  const text = waxbills(`${chicks}\ndate: 2026-03-24, ringed: {c1: "014", c2: LW 26 015}
    date: 2026-03-26, died: ${who}`);
  const known = room({ P: text, ...files }, '2026-04-20');
  const died = clutchIn(known, 'LW-1/1').chicks.filter(({ fate }) => fate?.kind === 'died');
  return { dead: died.map(({ ref }) => ref), codes: codes(known) };
}
