import fc from 'fast-check';
import { expect, it } from 'vitest';
import { accountMarkdown } from '../../../src/report/account/markdown.ts';
import { accountPage } from '../../../src/report/page/account.tsx';
import { birdPage } from '../../../src/report/page/bird.tsx';
import { accountOf } from '../../../src/rules/account/account.ts';
import { discretionOf } from '../../../src/rules/discretion/discretion.ts';
import { type Tellable, tellable } from '../../../src/rules/discretion/tellable.ts';
import { pairStory } from '../../../src/rules/season/story.ts';
import { handedOver } from '../../../src/rules/stock/handed-over.ts';
import { portraitOf } from '../../../src/rules/stock/portrait.ts';
import { stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, record, room } from '../../rooms.ts';

const ON = '2026-07-01';

const letters = fc.string({ unit: fc.constantFrom(...'BFGJKQVXZ'.split('')), minLength: 3, maxLength: 4 });
const digits = fc.integer({ min: 10, max: 9999 }).map(String);
const between = fc.constantFrom('-', ' ', '.', '', '_', ' | ', ' *', '[', '<b>', '👩‍🌾', '(');
const name = fc.tuple(letters, between, digits).map((parts) => parts.join(''));
/** An id holds no blank and no slash. */
const id = name.map((text) => text.replace(/[\s/]/g, '-'));

/** Names of a room, none of which stands within another, and what its keeper would not tell. */
const secrets = fc
  .record({
    ids: fc.uniqueArray(id, { minLength: 6, maxLength: 6, selector: plain }),
    rings: fc.uniqueArray(name, { minLength: 3, maxLength: 3, selector: plain }),
    housings: fc
      .uniqueArray(fc.tuple(fc.constantFrom('flight ', 'cage ', 'Elm Lane '), name), {
        minLength: 4,
        maxLength: 4,
        selector: ([, text]) => plain(text),
      })
      .map((all) => all.map((parts) => parts.join(''))),
    room: name,
    owner: name,
    hidden: name,
  })
  .filter(({ ids, rings, housings, room: place, owner, hidden }) => {
    const all = [...ids, ...rings, ...housings, place, owner, hidden].map(plain);
    return all.every((one, i) => all.every((other, j) => i === j || !other.includes(one)));
  });

type Secrets = typeof secrets extends fc.Arbitrary<infer S> ? S : never;

/** Only letters and digits, as whoever looks for a name would compare. */
function plain(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .toLowerCase();
}

/** The same name as somebody in a hurry writes it. */
const spelt = fc.constantFrom(
  (text: string) => text,
  (text: string) => text.toLowerCase(),
  (text: string) => `the${text}s`,
  (text: string) => `(${text}).`,
  (text: string) => text.replace(/[\s._-]/g, ''),
  (text: string) => text.split('').join('\u200B'),
);

/** A room in which every name stands wherever a keeper can write words. */
function roomOf(
  { ids, rings, housings, room: place, owner, hidden }: Secrets,
  spell: (text: string) => string,
): Files {
  const [pair, other, cock, hen, young, sire] = ids as [string, string, string, string, string, string];
  const all = [...ids, ...rings, ...housings, place, owner].map(spell);
  const text = (words: string) => JSON.stringify(words);
  const gossip = text(`seen: ${all.join(', ')}`);
  const secret = text(`private: ${hidden}`);
  const [first, second, third, fourth] = housings.map(text) as [string, string, string, string];
  const [ringA, ringB, ringC] = rings.map(text) as [string, string, string];
  return {
    'nestlog.yaml': `room: ${text(place)}\nlog:\n  - {date: 2026-02-01, food: ${gossip}, note: ${secret}}\n`,
    'birds.yaml': `birds:
  - {id: ${text(cock)}, ring: ${ringA}, species: lavender waxbill, sex: cock, sire: ${text(sire)}, origin: ${text(owner)}, owner: ${text(owner)}, log: [{date: 2025-01-01, arrived: ${second}, note: ${gossip}}, {date: 2025-02-01, released: ${third}, unwell: ${gossip}, treated: ${secret}}]}
  - {id: ${text(hen)}, species: lavender waxbill, sex: hen}
  - {id: ${text(young)}, is: ${text(`${pair}/1/c1`)}, log: [{date: 2026-04-20, moved: ${fourth}, unwell: ${secret}, note: ${secret}}]}
`,
    'pairs/a.yaml': `pair: ${text(pair)}
species: lavender waxbill
cock: ${text(cock)}
hen: ${text(hen)}
housing: ${first}
log:
  - {date: 2026-01-02, paired: ${first}, courting: ${gossip}, note: ${secret}}
  - {date: 2026-01-03, nest: {state: lined, site: ${gossip}, height: ${gossip}, material: ${gossip}}, photo: ${gossip}}
  - {date: 2026-01-04, food: [${gossip}, ${secret}], chasing: {by: ${text(cock)}, at: ${text(hen)}, level: hard}}
  - {date: 2026-03-01, clutch: 1, laid: 5, sitting, site: ${gossip}, note: ${gossip}}
  - {date: 2026-03-13, hatched: 4}
  - {date: 2026-03-14, fostered: {${text(other)}: c4}}
  - {date: 2026-03-20, ringed: {c1: ${ringB}, c2: ${ringC}}}
  - {date: 2026-03-21, died: {${gossip}: c2, ${secret}: c3}, treated: ${secret}}
  - {date: 2026-04-01, fledged: c1, note: ${secret}}
  - {date: 2026-04-12, independent: c1, moved: {c1: ${fourth}}}
`,
    'pairs/b.yaml': `pair: ${text(other)}\nspecies: lavender waxbill\nhousing: ${second}\nlog:\n  - {date: 2026-01-02, paired}\n`,
  };
}

/** What is found in a page or account, of what must not be. Tags and styles are no words of a keeper's. */
function leaked(output: string, withheld: readonly string[]): string[] {
  const text = plain(
    output
      .replace(/<style>[\s\S]*?<\/style>|<[^<>]*>/g, ' ')
      .replace(/&lt;/g, '<')
      .replace(/&amp;/g, '&')
      .replace(/\\(?=[^\w\s])/g, ''),
  );
  return withheld.filter((secret) => text.includes(plain(secret)));
}

const pictures = [{ day: 20454, note: null, path: '', missing: 'not found' }];

it('an account holds no name, ring, place, other keeper or private word that was not asked for', () => {
  fc.assert(
    fc.property(secrets, spelt, fc.subarray([...tellable]), (hush, spell, asked) => {
      const files = roomOf(hush, spell);
      const [read, understood] = [record(files, ON), room(files, ON)];
      const pair = understood.pairs.find((one) => one.id === hush.ids[0]);
      if (pair === undefined) throw new Error(`no pair ${hush.ids[0]}`);
      const told = new Set<Tellable>(asked);
      const discreet = discretionOf(read, understood, told);
      const account = accountOf(understood, read.pairs, pairStory(understood, pair), { discreet, told });
      expect(account.clutches).toHaveLength(1);
      const withheld = [
        ...(told.has('names') ? [] : hush.ids),
        ...(told.has('rings') ? [] : hush.rings),
        ...(told.has('places') ? [] : [...hush.housings, hush.room]),
        hush.owner,
        hush.hidden,
      ];
      expect(leaked(accountMarkdown(account, pictures), withheld)).toEqual([]);
      expect(leaked(accountPage(account, pictures), withheld)).toEqual([]);
    }),
    { numRuns: 40 },
  );
});

it('a bird’s page holds no place, other keeper or private word', () => {
  fc.assert(
    fc.property(secrets, spelt, fc.constantFrom(2, 3, 4), (hush, spell, which) => {
      const files = roomOf(hush, spell);
      const [read, understood] = [record(files, ON), room(files, ON)];
      const stock = stockOf(understood);
      const one = stock.birds.find(({ id: name }) => name === hush.ids[which]);
      if (one === undefined) throw new Error(`no bird ${hush.ids[which]}`);
      const discreet = discretionOf(read, understood, new Set(['names', 'rings']));
      const page = birdPage(handedOver(portraitOf(one, stock), discreet), stock, pictures);
      expect(leaked(page, [...hush.housings, hush.room, hush.owner, hush.hidden])).toEqual([]);
      expect(leaked(page, [one.id])).toEqual([one.id]);
    }),
    { numRuns: 40 },
  );
});
