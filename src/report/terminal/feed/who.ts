import type { Day } from '../../../days.ts';
import { hatchedOn } from '../../../room/clock.ts';
import type { Bird } from '../../../room/model.ts';
import type { Family, Hatching } from '../../../rules/feed/families.ts';
import type { HousingPlan } from '../../../rules/feed/plan.ts';
import { sumBy } from '../../../statistics/sums.ts';
import { count, fromTo, speciesName, stated } from '../../../words.ts';
import { dateSpan, weekdayDate } from '../dates.ts';
import { indented, type Page } from '../page.ts';
import { visible } from '../visible.ts';
import { wrap } from '../width.ts';

const NEEDS = {
  required: 'rears on live food',
  advised: 'live food advised',
  helpful: 'live food helps',
  no: 'no live food needed',
} as const;

/** A housing with nests in it: who feeds itself there, who is fed, who may hatch, and what live food fits. */
export function whoLines(place: HousingPlan, day: Day, page: Page): string[] {
  const number = sumBy(place.adults, (one) => one.number);
  const head = `${housingName(place)} · ${count(number, 'bird')} feeding ${number === 1 ? 'itself' : 'themselves'}`;
  return [
    ...wrap(head, page.width, { hanging: 2 }).map(page.look.heading),
    ...place.families.flatMap((family) => indented(familyWords(family, day), page, { hanging: 2 })),
    ...sizeWords(place, day).flatMap((text) => indented(text, page, { hanging: 2 })),
  ];
}

export function housingName({ housing }: Pick<HousingPlan, 'housing'>): string {
  return visible(housing ?? 'housing not recorded');
}

/** `LW-2, lavender waxbill: 3 young out of the nest, still fed (20–21 d). Rear on live food`. */
function familyWords({ pair, young, hatching, facts }: Family, day: Day): string {
  const parts = [
    youngWords(
      young.filter(({ fledged }) => fledged === null),
      day,
      'in the nest',
    ),
    youngWords(
      young.filter(({ fledged }) => fledged !== null),
      day,
      'out of it, still fed',
    ),
    ...hatching.map((one) => hatchingWords(one, day)),
  ];
  const need = facts.liveFood === null ? 'its need of live food is unknown' : NEEDS[facts.liveFood];
  return `${visible(pair.id)}, ${visible(speciesName(pair.species))} (${need}): ${stated(parts, '; ')}`;
}

function youngWords(young: readonly Bird[], day: Day, where: string): string | null {
  if (young.length === 0) return null;
  const ages = young.flatMap((bird) => {
    const hatched = hatchedOn(bird);
    return hatched === null ? [] : [day - hatched.to, day - hatched.from];
  });
  const [least, most] = [Math.min(...ages), Math.max(...ages)];
  const heard = young.some(({ placeholder }) => placeholder);
  return `${heard ? 'young heard, not counted,' : `${young.length} young`} ${where} (${fromTo(least, most)} d)`;
}

/** `4 eggs may hatch 14–17 Mar (about 2.6 chicks on average)`; after their days `4 eggs may have hatched 14–17 Mar …`. */
function hatchingWords({ from, to, eggs, counted, expected }: Hatching, day: Day): string {
  const chicks = Math.round(expected * 10) / 10;
  const days = `${to < day ? 'may have hatched' : 'may hatch'} ${from === to ? weekdayDate(from, day) : dateSpan(from, to, day)}`;
  if (!counted) return `at least ${count(eggs, 'egg')}, not counted, ${days}`;
  return `${count(eggs, 'egg')} ${days} (about ${count(chicks, 'chick')} on average)`;
}

/** `live food up to 4 mm; from Wed 20 May up to 7 mm`. */
function sizeWords({ days }: HousingPlan, day: Day): string[] {
  const changes = days.filter(
    ({ size, foods }, index) => foods.live.high > 0 && size !== null && size !== days[index - 1]?.size,
  );
  if (changes.length === 0) return [];
  const words = changes.map(({ day: on, size }) => {
    const since = on === day ? '' : `from ${weekdayDate(on, day)} `;
    return `${since}up to ${size?.upTo} mm`;
  });
  return [`live food ${words.join('; ')}`];
}
