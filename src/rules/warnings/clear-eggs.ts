import type { Day } from '../../days.ts';
import { keptIn } from '../../grouped.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Clutch, Pair } from '../../room/model.ts';
import { atLeast, type Beta, betaMean, betaUpdate, betaWithMoments } from '../../statistics/beta.ts';
import { clusteredProportion, effective } from '../../statistics/design-effect.ts';
import { sumBy } from '../../statistics/sums.ts';
import { count } from '../../words.ts';
import type { Found, View, Warning } from './warning.ts';

interface ClearEggs extends Found {
  clear: number;
  judged: number;
  /** Clutches of the run. */
  clutches: number;
  /** Probability of so many clear eggs or more, if this pair were as the others and as it was before. */
  chance: number;
  /** Share of fertile eggs that was to be expected. */
  expected: number;
}

/** Days after the last of them was known to be clear for which it is said. */
const SHOWN = 14;
/** A pair without a clutch begun in so many days has none to warn of. */
const LATELY = 90;
/** A run less likely than this is said. */
const RARE = 1 / 20;

/**
 * Fertility of small cage birds before a room has any figures of its own: eight in ten, with clutches far apart.
 * From memory. It weighs as much as three eggs.
 */
const BOOK = betaWithMoments(0.8, 0.2 ** 2);

export const clearEggs: Warning<ClearEggs> = {
  kind: 'clear-eggs',
  levels: ['note'],
  health: true,
  when: 'from a pair’s second clutch on: so many clear eggs in a run that it would happen less than once in twenty, going by the species, the room’s other pairs and this pair’s own clutches before',
  over: `a clutch with no such run; ${SHOWN} d after the last of them was known to be clear`,
  explain:
    'Some clear eggs are usual. A run of them that chance hardly makes has a cause, and most causes are plain: a bird too young or too old, two birds of one sex, a perch that rocks or is too thin, disturbance at the wrong hour, a diet without variety, close kin, feathers too thick around the vent. The odds are counted from the room’s own clutches of the species, allowing for eggs of one clutch sharing their fate; they say that something is likely the matter, not what. Birds that stay clear though all of that is right, or that look unwell, are a matter for an avian vet.',
  find: (view) => {
    const judgements = judgedOnce();
    return view.room.pairs.flatMap((pair) => runOf(pair, view, judgements) ?? []);
  },
  say: ({ clear, judged, clutches, chance, expected }) => ({
    text: `${ofEggs(clear, judged)} of ${clutches === 1 ? 'this clutch' : `the last ${clutches} clutches`} ${clear === 1 ? 'is' : 'are'} clear. Where ${Math.round(100 * expected)} in 100 were to be expected fertile, that happens once in ${Math.round(1 / chance)}.`,
    check:
      'first the age of both and whether their sexes are sure; then firm perches, disturbance, a varied diet, and how closely they are related. An avian vet if it goes on',
  }),
};

function ofEggs(clear: number, judged: number): string {
  if (clear < judged) return `${clear} of ${count(judged, 'egg')}`;
  return judged === 1 ? 'The one egg judged' : `All ${judged} eggs`;
}

interface Judged {
  clutch: Clutch;
  clear: number;
  judged: number;
  /** The day on which the last of its clear eggs was known. */
  known: Day;
}

/** The last clutch that was judged, with those before it that were clear throughout. */
function runOf(pair: Pair, { room, day }: View, judgedOf: JudgedOf): ClearEggs | null {
  if (!pair.clutches.some(({ opened }) => day - opened <= LATELY)) return null;
  const all = judgedOf(pair).filter(
    ({ clutch: { cock, hen } }) => sameBirds(cock, pair.cock) && sameBirds(hen, pair.hen),
  );
  const last = all.at(-1);
  if (last === undefined || all.length < 2 || day - last.known > SHOWN) return null;
  const fertile = all.findLastIndex((one) => one.clear < one.judged);
  const first = Math.min(fertile + 1, all.length - 1);
  const run = all.slice(first);
  const clear = sumBy(run, (one) => one.clear);
  const judged = sumBy(run, (one) => one.judged);
  const others = room.pairs.filter((other) => other !== pair && other.species === pair.species);
  const belief = betaUpdate(beliefFrom(others.flatMap(judgedOf)), fertileIn(all.slice(0, first)));
  const chance = atLeast(clear, judged, { a: belief.b, b: belief.a });
  if (chance >= RARE) return null;
  return {
    level: 'note',
    pair: pair.id,
    bird: null,
    clutch: last.clutch.number,
    date: last.known,
    clear,
    judged,
    clutches: run.length,
    chance,
    expected: betaMean(belief),
  };
}

function sameBirds(one: readonly string[], other: readonly string[]): boolean {
  return one.join('\n') === other.join('\n');
}

/** What to believe of a clutch of such a pair: the room's mean, with the book's spread between clutches. */
function beliefFrom(judged: readonly Judged[]): Beta {
  const mean = betaMean(betaUpdate(BOOK, fertileIn(judged)));
  const weight = BOOK.a + BOOK.b;
  return { a: mean * weight, b: (1 - mean) * weight };
}

/** Fertile of judged eggs, as many as so many strangers would tell. */
function fertileIn(judged: readonly Judged[]): { k: number; n: number } {
  return effective(clusteredProportion(judged.map((one) => ({ k: one.judged - one.clear, n: one.judged }))));
}

type JudgedOf = (pair: Pair) => readonly Judged[];

/** Each pair's clutches are judged once, however many pairs are held against them. */
function judgedOnce(): JudgedOf {
  const known = new Map<Pair, Judged[]>();
  return (pair) => keptIn(known, pair, () => pair.clutches.flatMap((clutch) => judgedIn(clutch) ?? []));
}

function judgedIn(clutch: Clutch): Judged | null {
  if (!clutch.counted) return null;
  const known = clutch.eggs.filter((egg) => egg.fate?.kind !== 'taken' && fertilityOf(egg) !== null);
  if (known.length === 0) return null;
  const clear = known.filter((egg) => fertilityOf(egg) === 'clear');
  const days = clear.map(
    ({ lamp, fate }) => lamp.findLast(({ saw }) => saw === 'clear')?.day ?? fate?.day ?? clutch.opened,
  );
  return { clutch, clear: clear.length, judged: known.length, known: Math.max(clutch.opened, ...days) };
}
