import type { Account } from '../../rules/account/account.ts';
import type { AccountClutch } from '../../rules/account/clutch.ts';
import { sumBy } from '../../statistics/sums.ts';
import { capital, count } from '../../words.ts';
import { fullDate } from '../terminal/dates.ts';

/** The title of an account and its first sentences. */
export function openings({ species, clutches, day }: Account): { title: string; opening: string[] } {
  const name = species === null ? 'A pair of a species not recorded' : capital(species.common);
  const scientific = species?.scientific ? ` (${species.scientific})` : '';
  const total = (of: (one: AccountClutch) => number) => sumBy(clutches, of);
  const days = clutches.flatMap(({ laid, hatched }) => laid?.from ?? hatched?.from ?? []);
  const since = days.length === 0 ? '' : ` since ${fullDate(Math.min(...days))}`;
  const eggs = clutches.some((one) => one.eggs === null) ? 'at least ' : '';
  const young = clutches.some((one) => one.chicks === null) ? 'at least ' : '';
  const bred =
    clutches.length === 0
      ? 'No clutch yet.'
      : `${count(clutches.length, 'clutch', 'clutches')}${since}: ${eggs}${count(
          total((one) => one.eggs ?? 0),
          'egg',
        )}, of which ${young}${total((one) => one.chicks ?? 1)} hatched; ${total((one) => one.left)} left the nest and ${total((one) => one.fed)} fed themselves.`;
  return {
    title: `${name}${scientific}: how one pair was kept and what it did`,
    opening: [
      bred,
      `As known on ${fullDate(day)}. Days are counted from the day of hatching, and from the day full sitting began, as day 0.`,
    ],
  };
}

/** What a clutch lost and why, and what of it went through other hands. */
export function losses(clutch: AccountClutch): { of: string; text: string }[] {
  const { number, taken, fostered, over } = clutch;
  const parts = [
    ...clutch.losses.map(
      (one) => `${one.what === 'egg' ? count(one.number, 'egg') : `${one.number} young`}: ${one.cause}`,
    ),
    ...(taken === 0 ? [] : [`${count(taken, 'egg')} taken by hand`]),
    ...(fostered === 0 ? [] : [`${fostered} sat on or fed by others for a time`]),
    ...(over === null ? ['not over yet'] : []),
  ];
  return parts.length === 0 ? [] : [{ of: `Clutch ${number}`, text: parts.join('; ') }];
}
