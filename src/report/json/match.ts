import { formatDay } from '../../days.ts';
import type { JudgedMating } from '../../rules/match/mating.ts';
import type { Proposal } from '../../rules/match/proposals.ts';
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
        runnerUp: runnerUp === null ? null : shortData(runnerUp),
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

function matingData({ zInbreeding, through, cautions, ...mating }: JudgedMating) {
  return {
    ...shortData(mating),
    zInbreeding,
    through: through.map(({ founder, share }) => ({ ancestor: founder, share })),
    cautions,
  };
}

/** What is told of a runner-up. */
function shortData({ cock, hen, inbreeding, meanKinship, cost, kin }: NonNullable<Proposal['runnerUp']>) {
  return { cock: cock.id, hen: hen.id, inbreeding, meanKinship, cost, kin };
}
