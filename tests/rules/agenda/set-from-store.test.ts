import { expect, it } from 'vitest';
import { agenda } from '../../rooms.ts';
import { hillFinches } from './hill-finch.ts';

// Hill finch: sits from the third egg, for 11–13 d.
const stored = `
  date: 2026-03-01, laid: 1, pulled: 1
  date: 2026-03-02, laid: 1, pulled: 1
  date: 2026-03-03, laid: 1, pulled: 1
  date: 2026-03-04, laid: 1, pulled: 1
`;

/** Why something is asked for on a day. */
const why = (task: string, log: string, on: string) =>
  agenda(hillFinches(log), on).flatMap(({ task: kind, why }) => (kind === task ? [why] : []));

it('eggs that were kept in store and set together are sat on from that day: every reason says so', () => {
  const log = `${stored}date: 2026-03-08, set: all`;
  expect(why('confirm-sitting', log, '2026-03-08')).toEqual([expect.stringMatching(/^e3 set 8 Mar \+/)]);
  for (const [task, on] of [
    ['hatch', '2026-03-20'],
    ['live-food', '2026-03-18'],
    ['unhatched', '2026-03-24'],
  ] as const)
    expect(why(task, log, on), task).toEqual([expect.stringContaining('sat on since 8 Mar')]);
});

it('where one lay in the nest before them, their term is that of the clutch', () => {
  const one = stored.replace('date: 2026-03-04, laid: 1, pulled: 1', 'date: 2026-03-04, laid: 1, sitting');
  const log = `${one}date: 2026-03-08, set: all`;
  expect(why('hatch', log, '2026-03-16')).toEqual([expect.stringMatching(/^sitting since 3–4 Mar \+/)]);
});
