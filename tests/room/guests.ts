import { kindOf } from '../../src/findings/codes.ts';
import { fullRef } from '../../src/room/model.ts';
import { type Files, room } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';

/** What is doubtful in a room, in sentences with their fix. */
export function doubts(files: Files, on = '2026-07-01'): string[] {
  return room(files, on).findings.map(
    (finding) => `${kindOf(finding).text(finding.args)}. ${kindOf(finding).hint(finding.args)}`,
  );
}

export const five = 'date: 2026-03-05, laid: 5, sitting';
export const finches = `date: 2026-03-02, laid: 3, sitting
  date: 2026-03-18, hatched: 2`;
/** Two chicks of a waxbill of five with a bengalese finch's own two, and what its journal says then. */
export const guests = (entry: string, own = finches) => ({
  P: waxbills(`${five}\ndate: 2026-03-18, hatched: 5\ndate: 2026-03-20, fostered: {BF-1: [c4, c5]}`),
  Q: journal('BF-1', 'bengalese finch', `${own}\n${entry}`),
});
/** Who died or left, by full name. */
export const dead = (files: Files) =>
  room(files, '2026-07-01')
    .birds.filter(({ fate }) => fate !== null)
    .map(fullRef);
