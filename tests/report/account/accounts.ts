import { type Account, accountOf } from '../../../src/rules/account/account.ts';
import { discretionOf } from '../../../src/rules/discretion/discretion.ts';
import type { Tellable } from '../../../src/rules/discretion/tellable.ts';
import { pairStory } from '../../../src/rules/season/story.ts';
import { type Files, record, room } from '../../rooms.ts';

interface Words {
  note: string;
  site: string;
  food: string;
  cause: string;
}

/** A pair of which a test names what its keeper wrote in free words. */
function wordyRoom({ note, site, food, cause }: Partial<Words>): Files {
  const text = (words: string | undefined) => JSON.stringify(words ?? 'plain');
  return {
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      housing: flight 2
      log:
        - {date: 2026-02-01, paired, food: [${text(food)}], nest: {state: lined, site: ${text(site)}}}
        - {date: 2026-03-01, clutch: 1, laid: 4, sitting, note: ${text(note)}}
        - {date: 2026-03-03, laid: 1, note: "looked in"}
        - {date: 2026-03-13, hatched: 3}
        - {date: 2026-03-21, died: {${text(cause)}: c2}}
    `,
  };
}

/** The account of LW-1 on 1 April 2026, all that can be told of it. */
export function told(
  words: Partial<Words>,
  asked: readonly Tellable[] = ['names', 'rings', 'places', 'notes'],
): Account {
  const on = '2026-04-01';
  const [read, understood] = [record(wordyRoom(words), on), room(wordyRoom(words), on)];
  const [pair] = understood.pairs;
  if (pair === undefined) throw new Error('no pair');
  const set = new Set(asked);
  return accountOf(understood, read.pairs, pairStory(understood, pair), {
    discreet: discretionOf(read, understood, set),
    told: set,
  });
}
