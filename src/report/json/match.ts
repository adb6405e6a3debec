import { formatDay } from '../../days.ts';
import type { JudgedMating } from '../../rules/match/mating.ts';
import type { JudgedPair, MatchPage } from '../match.ts';
import { jsonText } from './text.ts';

/** What is proposed, for programs. */
export function matchJson({ day, room, limit, species }: MatchPage): string {
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    room,
    maxInbreeding: limit,
    species: species.map((match) => ({
      species: match.species,
      proposals: match.proposals.map(({ reasons, runnerUp, ...mating }) => ({
        ...matingData(mating),
        reasons,
        runnerUp: runnerUp === null ? null : matingData(runnerUp),
      })),
      kept: match.kept.map(({ pair, ...mating }) => ({ pair, ...matingData(mating) })),
      leftOut: match.leftOut.map(({ one, why }) => ({ bird: one.id, sex: one.bird.sex, why })),
    })),
  });
}

/** One pair that there is, judged in the same way. */
export function judgedPairJson({ day, pair, limit, mating }: JudgedPair): string {
  return jsonText({ nestlog: 1, date: formatDay(day), maxInbreeding: limit, pair, ...matingData(mating) });
}

function matingData({
  cock,
  hen,
  inbreeding,
  zInbreeding,
  meanKinship,
  cost,
  kin,
  through,
  cautions,
}: JudgedMating) {
  return {
    cock: cock.id,
    hen: hen.id,
    inbreeding,
    zInbreeding,
    meanKinship,
    cost,
    kin,
    through: through.map(({ founder, share }) => ({ ancestor: founder, share })),
    cautions,
  };
}
