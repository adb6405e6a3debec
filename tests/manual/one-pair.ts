import { fileURLToPath } from 'node:url';
import { run } from '../../src/commands/due.ts';
import { day } from '../rooms.ts';

const journals = fileURLToPath(new URL('../../journals-example', import.meta.url));

/** What the keeper of the example room saw that morning of the pair LW-1. */
function morning(date: string): string {
  const written: string[] = [];
  const stdout = { write: (text: string) => void written.push(text), color: false, width: 80 };
  run({
    day: day(date),
    // Whoever tries it does so later; on the day itself all that follows would be taken for slips in the year.
    today: day('2026-05-17'),
    journals,
    state: '/nowhere',
    json: false,
    arguments: [],
    options: { days: 3, by: 'urgency', pair: 'LW-1' },
    stdout,
    stderr: stdout,
  });
  const call = `$ nestlog due --pair LW-1 --days 3 --date ${date}`;
  return `    ${[call, ...written.join('').trimEnd().split('\n')].join('\n    ')}`.replace(/^ +$/gm, '');
}

/** The guided walk through one brood of the example room; every morning in it is printed by the program. */
export function onePairPage(): string {
  return `# One pair, from pairing to independence

<!-- Made from journals-example by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`: the mornings are what the program says. -->

The first brood of LW-1, lavender waxbills, in the spring of 2024. The journal is
[pairs/waxbills/LW-1.yaml](../../journals-example/pairs/waxbills/LW-1.yaml) of the example room; keep it open beside this page. You can stand on
any of these mornings yourself: call \`nestlog due\` with \`--journals journals-example\`, and it knows nothing dated later.

## Paired, a nest, an egg a day

    - {date: 2024-02-12, paired, food: [dry seed, egg food, sprouted seed]}
    - {date: 2024-02-27, nest: {state: lined, site: broom bundle, height: 180 cm}}
    - {date: 2024-03-04, clutch: 1, laid: 1}
    - {date: 2024-03-05, laid: 1}
    - {date: 2024-03-06, laid: 1}

Small finches lay an egg a day, in the early morning (common practice). With the third egg this species begins to sit; all later
days are counted from there, so that is what is asked next.

${morning('2024-03-06')}

## Sitting, and a lamp

    - {date: 2024-03-07, laid: 1, sitting: hen, note: "she did not come off for the evening seed"}

Seen sitting on the 7th, and not yet at the look of the 6th with the third egg just laid: she began on one of these two days. Both stay
in every date that follows. The lamp counts from the later one, so that no egg is called clear too early.

${morning('2024-03-12')}

    - {date: 2024-03-13, candled: {fertile: [e1, e2, e4], clear: e3}}

Three fertile, one clear. The clear one stays where it is; it no longer counts for the hatch.

## Before the hatch

Food counts from the earliest possible day: worms belong on the table before the first beak opens.

${morning('2024-03-16')}

This keeper did not put any out. Nor did the program stop asking:

${morning('2024-03-18')}

## Three chicks

    - {date: 2024-03-19, hatched: [e1, e2], note: "two half shells on the path"}
    - {date: 2024-03-20, hatched: e4, heard: begging at dusk}

The day of hatching is day 0. The chicks are c1, c2 and c3 in hatching order, and each remembers its egg.

${morning('2024-03-21')}

Two of the three starved. It stands in the journal, with the sentence that this keeper never forgot; see the lines of 22 to 26 March.

## A ring, and warm nights

The ring goes on when it just stays on: from a day before the usual age somebody looks. Around now the hen also stops brooding by
night.

${morning('2024-03-26')}

The ring went on on the 27th. The morning after and the third day somebody looks at the leg:

${morning('2024-03-29')}

## Out of the nest

No looks in the week before: young that are disturbed then leave too early.

${morning('2024-04-07')}

    - {date: 2024-04-08, fledged: c1}

## The cock wants the next nest

Five days after the first fledging a parent of this species may begin to drive. There is no last day: it stays until nobody depends any
more.

${morning('2024-04-13')}

## Three nights out

    - {date: 2024-04-18, roosting: out}
    - {date: 2024-04-19, roosting: out}
    - {date: 2024-04-20, roosting: out}

Three nights in a row in which no fledgling slept in the nest, and it can come out (common practice). First, what lies in it still wants a
fate:

${morning('2024-04-21')}

    - {date: 2024-04-22, nest: cleaned, lost: {clear: e3}}

## Independent

    - {date: 2024-04-27, independent: c1, note: "husks seed like an old hand; no begging for a week"}

Four eggs, three fertile, three hatched, one reared: one line for each day on which something was seen. A year later nobody needs to
remember it.
`;
}
