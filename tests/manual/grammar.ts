import { birdObservations } from '../../src/journal/bird-observations/index.ts';
import type { ObservationDefinition } from '../../src/journal/grammar/observation.ts';
import { observations } from '../../src/journal/observations/index.ts';
import { traitKeys, traits } from '../../src/species/traits.ts';

/** The grammar reference, made from the files that the reader itself uses. */
export function grammarPage(): string {
  return `# What the files can say

<!-- Made from src/journal by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`: change it there. -->

A room is a folder:

| file | holds |
|---|---|
| \`nestlog.yaml\` | the room: name, season start, limits, own routines, its own log |
| \`birds.yaml\` | the birds that came from outside, and adults' lives |
| \`species/*.yaml\` | own species profiles, or corrections to the shipped ones |
| \`pairs/**/*.yaml\` | one journal a pair |

Files are YAML. All values are read as text: ring \`014\` stays \`014\`, \`no\` stays \`no\`. Anchors, tags and several documents in
one file are refused. When a file cannot be read as a whole, its log is read entry by entry, and what cannot be read is
named by \`nestlog check\` with its line. Keys in capitals, and other words that can mean one thing only (\`male\`, \`cage\`, \`diary\`), are read
with a hint, and so are the dashes, quotes and colons that a phone puts for those of YAML; what was seen is read under its own word
only, and \`check\` says which that is. Of two journals of one pair the one named after it counts, then the one that goes on longest.

## A pair's journal

| key | says |
|---|---|
| \`pair\` | the pair's id, without \`/\` |
| \`species\` | common name, scientific name or profile id |
| \`cock\`, \`hen\` | a bird: its id, its ring, or a chick of this room as \`PAIR/CLUTCH/CHICK\`; a list means one of these; leave it out if unknown |
| \`housing\` | cage, flight or aviary, in your own words |
| \`nest-looks\` | \`freely\`, \`sparingly\` or \`never\`: how much looking this pair bears |
| \`log\` | the visits, one a line |

## An entry: one visit

Any order of lines will do; they are sorted by \`date\`, then \`time\`, then the order of the trade within a day. One entry a line,
the note last and in double quotes, is the form that git merges best.

| key | says |
|---|---|
| \`date\` | \`2026-03-01\`, needed |
| \`time\` | \`07:30\` |
| \`after\` | what is told happened after this day (\`2026-02-27\`, or with a time): when you last looked, where the journal does not say |
| \`clutch\` | the number of the pair's clutch; write it on the first \`laid\` of each |
| \`site\` | which nest, where the pair has two; all that the entry says is of what lies in it |
| \`note\` | what you would tell a friend; one that begins with \`private:\` is yours alone and stands on no page and in no account |

## Whom it is about

| written | means |
|---|---|
| \`2\` | two, nobody knows which |
| \`some\`, \`3+\`, \`~3\` | at least one, at least three, about three |
| \`e1\`, \`[e1, e3]\` | eggs in laying order in their clutch |
| \`c1\`, \`[c1, c2]\` | chicks in hatching order |
| \`"c1, c2": …\` | several, in quotes where they stand before what is said of them: \`moved: {"c1, c2": flight 3}\` |
| \`2/c1\` | of the pair's own clutch 2 |
| \`SF-2/1/c1\` | another pair's, a guest here |
| \`cock\`, \`hen\`, \`both\` | the parents |
| a ring, \`ring:014\` | where a code looks like a count or a ref |
| \`all\` | everyone in this nest for whom it is possible, guests included; in \`crops\`, \`died\` and \`fostered\` the nestlings, where there are any |

A number takes those that agree best with what is known, then the lowest.

- Who is named by a later line was not the one that died, hatched or was lost by number; one that was ringed, weighed or had its
  crop looked at on that day is the last to be taken for dead. Where the guess would change a rate, \`check\` asks for refs.
- Beside one that is named a number and \`all\` mean the others: \`crops: {full: all, thin: c3}\`. \`0\` may be said in
  \`candled\` and \`checked\` only.
- In a nest that nobody counted, whoever is named or numbered is there, up to a usual clutch where named: eggs that were only
  seen to be sat on, young that were only heard or told at the least, and young with a ring, a weight, an age or a crop of which
  nobody wrote that they hatched, where their eggs were sat on long enough. Whom a number passes over, and nothing else of that
  day tells of, is asked about. The egg on which the pair was seen sitting is one of those that the first \`laid\` tells of. A
  journal may begin in the middle of a brood, with what the lamp showed or with what hatched.
- A chick of which nobody wrote that it flew or died lies in the nest for a week longer than its kind does at the most. What is
  sat on after that, and what begs a week after it would feed itself, is of the next brood. Nor is an egg that a brood left
  behind what is sat on later, or meant by a number beside newer ones, or missed by a look that counts without it.
- Young that fly by number once others of that nest have been out for as long as their kind lies in it at the least, and a week
  at the least, are of the next brood, seen or not. Sooner they are more of a brood that nobody counted; of one that was, they
  hatched of its open eggs within a week of the first that flew, where these are enough and nobody looked in since, with a hint;
  else they are too many. Chicks that hatch by number where no egg is waited for any more are of the next brood, too.
- A line that counts everyone and takes them away, as \`checked: {eggs: 4}, fostered: {SF-2: all}\`, counted them before. So did a
  count without a time of as many as lay there that morning, where some were taken elsewhere or out on that day.
- Young of which nobody wrote that they left the nest can be told to feed themselves once their kind can. A number and \`all\` mean
  those that are known to be out and old enough, and broods of which nobody wrote that any is out, before those that are too young.
- Eggs that a look finds where none is waited for are a new clutch once the last is over: its young are out, or its last egg
  or chick was lost, or taken elsewhere, five days ago. An overdue egg from beside which its keeper took all the young is left behind.
- In \`fostered\` a number and \`all\` mean chicks that hatched in nobody's nest in the last five days before they mean eggs. Eggs taken
  to another place before anybody was seen sitting may have been cold until then: their hatch is looked for until the later day.

The day of hatching is day 0; so is the day full sitting began.

## What can be seen or done

The order within a day is that of the table's last column: of two observations of one day without a time, the lower number
happened first. A pair that is together and is parted and put together on one day, anew or with a new mate, was parted first. Where eggs or young came from another pair's nest that day, whatever is written of that nest without a time
comes after it: foster parents seen sitting sit on what they were given. Whoever was brought to a nest is not meant by a
number or \`all\` that is taken out of it by hand on that day, while others are there (\`lost: {removed: all}\`, an exchange). A
*look* means that whoever wrote it saw into the nest; whom it counted can be named in all that is told of that day
(\`checked: {chicks: 2}, ringed: {c1: LW 26 014, c2: LW 26 015}\`), unless eggs or young came or went on it.

${table(observations)}

## The log of a bird in \`birds.yaml\`

A bird has \`id\`, and as known \`ring\`, \`species\`, \`sex\`, \`hatched\`, \`sire\`, \`dam\`, \`origin\`, \`owner\`. Of one that came with
no more than the year on its ring, \`hatched: 2024\` is enough, or \`2024-05\`. \`is: LW-3/2/c1\` names a chick that
hatched here and carries its later life. Its \`log\`:

${table(birdObservations)}

## A species profile

Shipped profiles are corrected by a file in \`species/\` with \`species:\` and the keys you know better. A value is a range
(\`12-14\`), one figure, or \`{range: 12-14, source: …, grade: …}\`.

| key | counts |
|---|---|
${traitKeys.map((key) => `| \`${traits[key].name}\` | ${countsOf(key)} |`).join('\n')}
`;
}

function countsOf(key: (typeof traitKeys)[number]): string {
  const { unit, words } = traits[key];
  return [unit === 'egg' ? 'the number of the egg' : unit, ...(words ?? []).map((word) => `\`${word}\``)]
    .filter((part) => part !== '')
    .join(', ');
}

function table(definitions: Record<string, ObservationDefinition>): string {
  const rows = Object.entries(definitions).map(([key, { takes, doc, example, look, order }]) => {
    const looks = look === false ? '' : look === true ? 'look' : 'look, if it was an egg or chick';
    return `| \`${key}\` | ${escaped(takes)} | ${escaped(doc)} | \`${escaped(example)}\` | ${looks} | ${order} |`;
  });
  return ['| key | takes | means | example | look | order |', '|---|---|---|---|---|---|', ...rows].join(
    '\n',
  );
}

function escaped(text: string): string {
  return text.replaceAll('|', '\\|');
}
