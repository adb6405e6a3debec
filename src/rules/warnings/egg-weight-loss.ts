import { type Day, shortDay } from '../../days.ts';
import type { Egg } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { type Brood, mayHatch } from '../brood.ts';
import { type EggLoss, eggLoss, type LossForecast, shares, WANTED_WORDS, widest } from '../incubator/loss.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface EggWeightLoss extends Found {
  eggs: string;
  many: boolean;
  verdict: 'fast' | 'slow';
  /** Others in the same machine go the other way, so it is not the humidity. */
  differ: boolean;
  atPip: Range;
  /** Days of warmth at the last weighing. */
  warm: number;
  pip: Day;
}

/** Days after the last weighing for which it is said. */
const SHOWN = 3;

export const eggWeightLoss: Warning<EggWeightLoss> = {
  kind: 'egg-weight-loss',
  levels: ['watch'],
  health: true,
  when: 'eggs in an incubator were weighed, and at the rate so far will have lost more or less than 12.5–17.5 % of their fresh mass when they pip, as surely as nine in ten',
  over: `the next weighing; ${SHOWN} d after the last; the day of pipping`,
  explain:
    'Eggs of 81 species lost 15 % of their fresh mass, with a standard deviation of 2.5 (Ar & Rahn 1980). An egg that dries too slowly leaves the chick no air to breathe before it pips; one that dries too fast, a chick stuck to its shell. Moister air slows it, drier air hastens it. The loss is carried on in a straight line from the weights, and rises a little towards the end; the range, nine in ten, tells how much the scales and the number of weights can bear out. One egg that loses far more than its fellows may be cracked. Temperature, turning, and how to change the humidity are the incubator maker’s matter, and an avian vet’s where chicks die in the shell.',
  find: ({ day, broods }) => broods.flatMap((brood) => lossesIn(brood, day)),
  say: ({ eggs, many, verdict, differ, atPip, warm, pip }) => ({
    text: `${opening(eggs)} in the incubator, at day ${Math.round(warm)} of warmth: ${shares(atPip)} lost by ${shortDay(pip)}, about when ${many ? 'they pip' : 'it pips'}; ${WANTED_WORDS} is wanted. ${MEANS[verdict](many)}.`,
    check: `${differ ? ONE_MACHINE : TURN[verdict]}; weigh again in three days. How, and temperature and turning, is the maker’s matter; where chicks die in the shell, an avian vet’s`,
  }),
};

const MEANS = {
  fast: (many: boolean) => `${many ? 'They dry' : 'It dries'} too fast`,
  slow: (many: boolean) => `${many ? 'They dry' : 'It dries'} too slowly`,
} as const;

const TURN = {
  fast: 'a cracked shell? Else somewhat more humidity',
  slow: 'somewhat less humidity',
} as const;

const ONE_MACHINE =
  'others in the same machine go the other way, so a crack, a mix-up or a slip in a weight before the humidity';

/** The eggs of a brood go one way or the other. Those on track, or not sure yet, are for the pair's page. */
function lossesIn(brood: Brood, day: Day): EggWeightLoss[] {
  if (brood.where !== 'incubator') return [];
  const tracked = brood.eggs.flatMap((egg) => {
    const loss = mayHatch(egg) && egg.pipped === null ? eggLoss(egg, day) : null;
    if (loss === null || loss.atPip === null || day - loss.last.day > SHOWN || day >= loss.pip) return [];
    return [{ egg, loss, atPip: loss.atPip }];
  });
  return (['fast', 'slow'] as const).flatMap((verdict) => {
    const these = tracked.filter(({ loss }) => loss.verdict === verdict);
    const range = widest(these.map(({ atPip }) => atPip));
    const other = tracked.some(({ atPip }) =>
      verdict === 'slow' ? atPip.low > range.high : atPip.high < range.low,
    );
    return these.length === 0 ? [] : [found(brood, verdict, these, other)];
  });
}

function found(
  brood: Brood,
  verdict: EggWeightLoss['verdict'],
  these: readonly { egg: Egg; loss: EggLoss; atPip: LossForecast }[],
  differ: boolean,
): EggWeightLoss {
  return {
    ...about(brood),
    level: 'watch',
    date: Math.max(...these.map(({ loss }) => loss.last.day)),
    eggs: names(
      brood,
      these.map(({ egg }) => egg),
    ),
    many: these.length > 1,
    verdict,
    differ,
    atPip: widest(these.map(({ atPip }) => atPip)),
    warm: Math.max(...these.map(({ loss }) => loss.warm)),
    pip: Math.min(...these.map(({ loss }) => loss.pip)),
  };
}
