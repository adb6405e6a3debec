import { type Day, shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Room } from '../../room/fold.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird, Pair } from '../../room/model.ts';
import { count } from '../../words.ts';
import { restOf } from '../hen-year.ts';
import { UNWELL_FOR } from '../illness.ts';
import { profileOf } from '../profile-of.ts';
import { fewNames, type Quarantine, quarantineOf } from '../quarantine.ts';
import { breedsFrom, statusOf } from '../stock/life.ts';
import { birdsByName, type FindBird } from '../stock/names.ts';
import type { AgendaItem, TaskWords } from './item.ts';
import { GIVEN_UP, stateOn } from './state.ts';

/** Days within which the hatch must be known for a first moult to be foretold. */
const ABOUT = 14;

/** Days within which a bird whose quarantine is over is let out. */
const LET_OUT = 2;

/** Tasks of single birds, whether or not they are in a pair. */
export function birdTasks(room: Room): AgendaItem[] {
  const find = birdsByName(room.birds);
  return [
    ...room.birds.flatMap((bird) => [
      ...quarantineEnd(room, bird),
      ...noteOfAge(room, bird, 'moult'),
      ...noteOfAge(room, bird, 'of-age'),
    ]),
    ...room.pairs.flatMap((pair) => rest(room, pair, find)),
  ];
}

/** What single birds' tasks mean. */
export const birdTaskWords = {
  'quarantine-end': {
    task: 'quarantine-end',
    say: 'let out of quarantine',
    when: `arrival, return, or the day on which another bird joined or died in its housing + the days of quarantine … + ${LET_OUT} d`,
    doneBy: '`released`',
    over: `the bird left; ${GIVEN_UP} d later. It waits while the bird, or one that shared its housing, is unwell, until \`well again\` or ${UNWELL_FOR} d without a word of it, also of treatment`,
    explain:
      'New and returned birds stay apart for thirty days at least (common practice), longer when a vet says so, and the days begin anew when another bird joins them. It waits while the bird or one that shares its housing is unwell, also where the ill one was taken out since: what one has, the others may carry. When a bird dies there, or was taken out ill and dies, the days begin anew with its death for all that were with it. Ask an avian vet what it died of before anybody is let out; when the vet lets them out sooner, write `released`.',
  },
  moult: {
    task: 'moult',
    say: 'first moult begins about now',
    when: 'hatching + the profile’s first day of the juvenile moult: one note on the day',
    doneBy: '`moult`',
    over: 'the day is past, the bird left, or it came here when it was older',
    explain:
      'The first moult costs a young bird strength: no move, no new company, good food and calm. Many losses of weaned young fall into it.',
  },
  'of-age': {
    task: 'of-age',
    say: 'old enough to breed from now on',
    when: 'hatching + the profile’s lowest age for breeding: one note on the day',
    doneBy: 'nothing: it is for knowing',
    over: 'the day is past, the bird left, or it came here when it was older',
    explain:
      'A floor for the bird’s sake, later than the first age at which the species can breed. Hens that lay too young are among those that suffer egg binding.',
  },
  rest: {
    task: 'rest',
    say: 'let the hen rest: no further nest',
    when: 'the first fledging of the last clutch that a year allows her, with no end',
    doneBy: '`parted`, or `nest: removed`',
    over: `${GIVEN_UP} d later`,
    explain:
      'Every clutch costs a hen calcium and flesh. Once she has had as many in a year as the room’s limit (else the species’) allows, take the nest out when the young have left it, or part the pair.',
  },
} as const satisfies Record<string, TaskWords>;

function item(room: Room, task: keyof typeof birdTaskWords, window: Window, about: About): AgendaItem[] {
  const state = stateOn(room.day, window, window.lapses);
  if (state === null) return [];
  const { from, to, why } = window;
  const { say } = birdTaskWords[task];
  return [
    { task, clutch: null, ...about, from, likely: null, to, state, say, why, basis: null, apart: null },
  ];
}

interface Window {
  from: Day;
  to: Day | null;
  lapses: Day;
  why: string;
}

type About = Pick<AgendaItem, 'pair' | 'bird' | 'who' | 'housing' | 'species'>;

function aboutBird(bird: Bird): About {
  return { pair: null, bird: bird.id, who: [bird.id], housing: housingOf(bird), species: bird.species };
}

function quarantineEnd(room: Room, bird: Bird): AgendaItem[] {
  const quarantine = quarantineOf(room, bird);
  if (quarantine === null || quarantine.ill.some(({ over }) => room.day < over)) return [];
  const { out } = quarantine;
  const window = { from: out, to: out + LET_OUT, lapses: out + GIVEN_UP, why: whyOut(bird, quarantine) };
  return item(room, 'quarantine-end', window, aboutBird(bird));
}

/** From what the days are counted, who was unwell beyond them, and the vet where it was another bird that ailed or died. */
function whyOut(bird: Bird, { from, until, out, joined, died, ill }: Quarantine): string {
  const begun =
    died.length > 0
      ? `${fewNames(died)} died`
      : joined.length > 0
        ? `with ${fewNames(joined)} since`
        : cameWords(bird, from);
  const last = ill.filter(({ over }) => over === out && out > until).map((illness) => illness.bird);
  const others = last.filter((one) => one !== bird);
  const unwell = last.includes(bird) ? 'unwell' : `${fewNames([...new Set(others)])} unwell`;
  const waited = last.length === 0 ? '' : `, ${unwell} until ${shortDay(out)}`;
  const vet = died.length + others.length > 0 ? '; ask an avian vet first' : '';
  return `${begun} ${shortDay(from)} + ${until - from} d${waited}${vet}`;
}

/** How it came on that day; where it did not, its days were written to begin then. */
function cameWords({ absences, arrived }: Bird, day: Day): string {
  if (absences.some(({ until }) => until === day)) return 'back';
  return arrived === day ? 'arrived' : 'apart since';
}

/** One note on the day on which a young bird comes into an age. */
function noteOfAge(room: Room, bird: Bird, task: 'moult' | 'of-age'): AgendaItem[] {
  const hatched = hatchedOn(bird);
  const profile = profileOf(room, bird);
  // Not of the dead and gone, nor of one on the list that is still to come.
  if (hatched === null || statusOf(bird, room.day, { profile, paired: true }) !== 'here') return [];
  if (task === 'moult' && (bird.moult.length > 0 || hatched.to - hatched.from > ABOUT)) return [];
  const age = task === 'moult' ? profile?.moult?.value.low : profile?.breedingAge?.value.low;
  if (age === undefined) return [];
  const on = task === 'moult' ? hatched.to + age : breedsFrom(hatched.to, profile);
  const born = hatched.from === hatched.to ? '' : 'by ';
  const why = `hatched ${born}${shortDay(hatched.to)} + ${age} ${task === 'moult' ? 'd' : 'months'}`;
  return item(room, task, { from: on, to: on, lapses: on, why }, aboutBird(bird));
}

/** The hen of a pair has had her year's clutches: said from the first fledging of the last of them. */
function rest(room: Room, pair: Pair, find: FindBird): AgendaItem[] {
  const needed = restOf(room, pair, find);
  if (needed === null || needed.from === null) return [];
  const { hen, clutches, limit, from, free } = needed;
  const why = `${count(clutches, 'clutch', 'clutches')} in a year, the limit is ${limit}; first fledged ${shortDay(from)}; free again ${shortDay(free)}`;
  const about = { pair: pair.id, bird: null, who: [hen.id], housing: pair.housing, species: pair.species };
  return item(room, 'rest', { from, to: null, lapses: from + GIVEN_UP, why }, about);
}
