import { type Day, dayWithYear } from '../days.ts';
import type { Finding } from '../findings/finding.ts';
import type { RoomRecord } from '../journal/record.ts';
import { hatchedOn } from './clock.ts';
import type { Fold } from './scene.ts';

/** Of each listed bird the first line of its log, up to the day, that is dated before the bird can have hatched. */
export function beforeHatching({ birds }: Fold, record: RoomRecord, day: Day): Finding[] {
  return record.birds.flatMap((listed): Finding[] => {
    const { id, log } = listed;
    const bird = birds.get(id.text);
    const hatched = bird?.listed === listed ? hatchedOn(bird) : null;
    const first = log.find(({ date }) => hatched !== null && date < hatched.from && date <= day);
    if (hatched === null || first === undefined) return [];
    const args = { bird: id.text, day: dayWithYear(first.date), hatched: dayWithYear(hatched.from) };
    return [{ code: 'before-hatching', at: first.dateAt, args }];
  });
}
