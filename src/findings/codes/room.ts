import { count } from '../../words.ts';
import { asWritten } from '../as-written.ts';
import type { FindingKind } from '../codes.ts';
import type { FindingArgs } from '../finding.ts';

const counted = (number: FindingArgs[string] | undefined, what: string) =>
  number === 0 ? '' : count(Number(number), what);

/** `e1`, `[e1, e2]`: some of them as a value. */
const refs = (names: FindingArgs[string] | undefined) =>
  String(names).includes(',') ? `[${names}]` : String(names);

/** How a chick is named: `c1`, `2/c1`, `LW-3/2/c1`. */
const CHICK = /(?:^|\/)c\d+$/;

/** Where a word is no egg or bird, but may be a cause. */
const causeBefore = (instead: FindingArgs[string] | undefined) =>
  instead ? `; a cause stands before them: \`${instead}\`` : '';

/** Where the pair's eggs or young are with others, that may be why nobody is meant. */
const withHosts = ({ hosts, named, did }: FindingArgs) => {
  if (!hosts) return null;
  const here = named ? `, or name them here: ${named}` : '';
  const other = did === 'fledged' ? '; of another brood of its own name the `clutch:`' : '';
  return `its eggs or young are with ${hosts}: write it in that journal${here}${other}`;
};

/** What can be wrong with what the journals say once they are read together. */
export const roomCodes = {
  'unknown-species': {
    level: 'hint',
    text: ({ name }) => `no profile for the species \`${name}\`, so no dates can be expected`,
    hint: ({ suggestion, name }) => {
      const file = `the few numbers you know go into species/${String(name).replaceAll(' ', '-')}.yaml: \`species: ${name}\`, and below it such as \`incubation: 12-14\``;
      return suggestion ? `did you mean \`${suggestion}\`? If it is another bird, ${file}` : file;
    },
  },
  'pair-twice': {
    level: 'error',
    text: ({ pair, file }) => `the pair \`${pair}\` already has a journal, ${file}; this one is left out`,
    hint: ({ pair, file, only }) => {
      const missing = /\D/.test(String(only)) ? `lines ${only} are` : `line ${only} is`;
      const copy =
        only === ''
          ? 'all its entries stand there too: if it is a copy, remove it'
          : `if it is a copy, its ${missing} not there yet: put what is missing into ${file}, and remove it`;
      return `${copy}; if it is another pair, give it its own id, such as \`pair: ${pair}-b\``;
    },
  },
  'no-such-pair': {
    level: 'error',
    text: ({ pair }) => `no journal has the pair \`${pair}\``,
    hint: ({ suggestion }) =>
      suggestion ? `did you mean \`${suggestion}\`?` : 'pairs are named by the `pair:` of their journal',
  },
  'no-such-clutch': {
    level: 'error',
    text: ({ pair, number }) => `${pair} has no clutch ${number} on that day`,
    hint: ({ have, number, found }) =>
      [
        have ? `it has ${have}` : 'a first `laid` begins a clutch',
        ...(found ? [`of eggs that nobody knew of, \`clutch: ${number}, laid: 4, lost: {clear: 4}\``] : []),
      ].join('; '),
  },
  'no-such-egg': {
    level: 'error',
    text: ({ who, where }) => `there is no egg \`${who}\` (${where})`,
    hint: ({ have }) => (have ? `the eggs there are ${have}` : 'record it with `laid: 1` first'),
  },
  'no-such-chick': {
    level: 'error',
    text: ({ who, where }) => `there is no chick \`${who}\` (${where})`,
    hint: ({ have }) => (have ? `the chicks there are ${have}` : 'record it with `hatched: 1` first'),
  },
  'no-such-bird': {
    level: 'error',
    text: ({ who, did }) => `nobody here is called \`${who}\` (${did})`,
    hint: ({ who, instead }) =>
      asWritten(who) ??
      `a chick (c1), an egg (e1), cock, hen, a ring or an id of birds.yaml${causeBefore(instead)}`,
  },
  'egg-not-hatched': {
    level: 'error',
    text: ({ who }) => `no chick came out of \`${who}\` as far as the journal knows`,
    hint: ({ who, have, did }) => {
      if (did === 'died') {
        return `an egg that died is \`lost: {dead-in-shell: ${who}}\`, or \`candled: {dead: ${who}}\` while it lies there; a chick is first \`hatched: ${who}\``;
      }
      return have ? `the chicks there are ${have}` : 'record it with `hatched: e1` first';
    },
  },
  'not-an-egg': {
    level: 'error',
    text: ({ who }) => `\`${who}\` is not an egg`,
    hint: ({ who, instead }) => asWritten(who) ?? `eggs are e1, e2 … in laying order${causeBefore(instead)}`,
  },
  'parent-unknown': {
    level: 'error',
    text: ({ parent, pair }) => `which bird is the ${parent} of ${pair} is not known`,
    hint: ({ parent }) => `name the bird by its id, or write \`${parent}: ID\` at the top of the journal`,
  },
  'laid-all': { level: 'error', text: () => '`laid: all` does not say how many', hint: () => 'laid: 1' },
  'laid-twice': {
    level: 'error',
    text: ({ who, clutch }) => `${who} of clutch ${clutch} is laid already`,
    hint: () => 'a new egg: `laid: 1`; a new clutch: `clutch: 2, laid: 1`',
  },
  'egg-skipped': {
    level: 'error',
    text: ({ who, next }) => `the next egg of this clutch is ${next}, not ${who}; it is counted as ${next}`,
    hint: ({ next }) => `laid: ${next}`,
  },
  impossible: {
    level: 'error',
    text: ({ who, did, why }) => `${who} cannot be ${did}: ${why}`,
    hint: () => 'another one, another clutch, a missing entry before it, or correct the earlier entry',
  },
  'back-from-hand': {
    level: 'error',
    text: ({ who, why }) => `${who} was not away: ${why}`,
    hint: ({ who, pair }) =>
      `put into a nest again it is brought to that pair: \`fostered: {${pair}: ${who}}\``,
  },
  'hatched-twice': {
    level: 'error',
    text: ({ who, why }) => `${who} cannot hatch again: ${why}`,
    hint: () => 'hatching is told once: take this out, or name another egg',
  },
  'hatched-too-soon': {
    level: 'error',
    text: ({ who, why }) => `${who} cannot have hatched: ${why}`,
    hint: () => 'another clutch (`clutch: 2`), an older egg, or a slip in one of the dates',
  },
  'too-many': {
    level: 'error',
    text: ({ did, count, possible, pair }) =>
      `${count} ${did}, but in the nest of ${pair} it is possible for ${possible}`,
    hint: (args) =>
      withHosts(args) ??
      (args.did === 'hatched'
        ? 'record the missing eggs with `laid:` on their day'
        : 'a smaller count, or the missing ones first'),
  },
  'nobody-possible': {
    level: 'error',
    text: ({ did, pair }) => `\`${did}\` fits nobody in the nest of ${pair} on that day`,
    hint: (args) => withHosts(args) ?? 'another clutch, another date, or a missing entry before it',
  },
  'dead-bird': {
    level: 'error',
    text: ({ who, did, why }) => `nothing new can be told of ${who} (${did}): ${why}`,
    hint: ({ who, others = '' }) =>
      CHICK.test(String(who))
        ? `another chick${others ? `, of those here ${others}` : ''}, or a slip in one of the dates. Of a count the lowest number is taken: if another died, name it in the entry of that day, such as \`died: c3\``
        : 'another bird, or a slip in one of the dates; a new mate is `paired: {hen: ID}`',
  },
  'hen-in-two-pairs': {
    level: 'error',
    text: ({ hen, pair, other, day }) =>
      `the hen ${hen} has a clutch in ${other} on ${day} while this one of ${pair} is in course`,
    hint: () => 'a hen lays in one nest at a time: another hen, or a slip in one of the dates',
  },
  'ring-twice': {
    level: 'error',
    text: ({ ring, bird }) => `the ring ${ring} is on ${bird} already`,
    hint: () => 'one ring, one bird: read it once more',
  },
  'bird-twice': {
    level: 'error',
    text: ({ id, line }) => `the bird \`${id}\` is listed already, on line ${line}`,
    hint: () => 'one item a bird',
  },
  'chick-named-twice': {
    level: 'error',
    text: ({ ref, bird }) => `\`is: ${ref}\` is the bird \`${bird}\` already`,
    hint: ({ bird }) => `one item a chick: take this \`is:\` out, or the one of \`${bird}\``,
  },
  'parent-sex': {
    level: 'error',
    text: ({ bird, parent, sex }) => `${bird} stands as ${parent} but is a ${sex}`,
    hint: () => 'another bird, or correct its `sex:`',
  },
  'other-species': {
    level: 'hint',
    text: ({ bird, species, parent, other }) => `${bird} (${species}) stands as ${parent} (${other})`,
    hint: () =>
      'another bird, or correct a `species:`; a cross that is meant has a name of its own, `species: goldfinch mule`, and counts among neither',
  },
  'own-ancestor': {
    level: 'error',
    text: ({ loop }) => `a bird among its own ancestors: ${loop}`,
    hint: () => 'one of these has the wrong sire or dam',
  },
  'no-such-chick-named': {
    level: 'error',
    text: ({ ref }) => `\`is: ${ref}\` names a chick that no journal has`,
    hint: () => 'is: PAIR/CLUTCH/CHICK, such as LW-3/2/c1',
  },
  'which-clutch': {
    level: 'hint',
    text: ({ did, taken, others }) =>
      `${did}: possible in more than one clutch; taken as ${taken}, not ${others}`,
    hint: ({ number }) => `say which: \`clutch: ${number}\``,
  },
  guessed: {
    level: 'hint',
    text: ({ did, taken, others }) =>
      `${did}: taken as ${taken}, but ${others} would do as well and count differently`,
    hint: () => 'name them: refs such as e1 or c2',
  },
  'paired-anew': {
    level: 'hint',
    text: ({ pair }) => `${pair} gets a new mate without having been parted`,
    hint: () => 'add `{date: …, parted}` before it, so that the old mate is not taken to be there',
  },
  'hatched-though-clear': {
    level: 'hint',
    text: ({ who }) => `${who} hatched though the lamp had called it clear; the chick is believed`,
    hint: () => 'if the lamp was right it came out of another egg: name that one, `hatched: e2`',
  },
  'clear-though-fertile': {
    level: 'hint',
    text: ({ who }) => `${who} lost as clear, though seen fertile before; clear is believed`,
    hint: ({ who }) =>
      `an egg that was fertile and died is \`lost: {dead-in-shell: ${refs(who)}}\`; where some were clear, name those`,
  },
  'counted-as-laid': {
    level: 'hint',
    text: ({ count, clutch }) =>
      `${count} more than the journal knows; taken as laid in clutch ${clutch} since the last look`,
    hint: ({ count }) => `laid: ${count}`,
  },
  'counted-as-hatched': {
    level: 'hint',
    text: ({ who, count }) =>
      `${counted(count, 'chick')} more than the journal knows; taken as hatched from ${who} since the last look`,
    hint: ({ count }) => `hatched: ${count}`,
  },
  'counts-differ': {
    level: 'hint',
    text: ({ what, known, seen, pair }) =>
      `${counted(seen, what === 'eggs' ? 'egg' : 'chick') || `no ${what}`} seen, ${known} known in the nest of ${pair}`,
    hint: ({ what, known, seen }) => {
      const more = Number(seen) - Number(known);
      if (what === 'eggs') {
        return more < 0
          ? 'what became of the others? `lost: {missing: 1}`'
          : `was a line left out? \`laid: ${more}\`, or \`back: e1\` for one that was written as lost`;
      }
      return more < 0
        ? 'what became of the others? `died: 1`'
        : `was a line left out? \`hatched: ${more}\`, or \`back: c1\` for one that was written as dead`;
    },
  },
  'nest-over-brood': {
    level: 'hint',
    text: ({ pair, state, eggs, chicks }) =>
      `the nest of ${pair} was ${state} with ${[counted(eggs, 'egg'), counted(chicks, 'chick')].filter(Boolean).join(' and ')} in it, as far as the journal knows`,
    hint: ({ eggs }) =>
      `what became of them? \`${eggs === 0 ? 'died: {unknown: all}' : 'lost: {removed: all}'}\`, \`fostered: {PAIR: all}\`; of two nests name the one: \`site: gorse\``,
  },
  'ringed-late': {
    level: 'hint',
    text: ({ who, age }) =>
      `${who} was ${age} d old: a closed ring does not go on then, only an open or split one`,
    hint: ({ from, to }) =>
      `a closed one went on ${from === to ? `about ${from}` : `between ${from} and ${to}`}, or another chick got it; with an open or split one write \`skip: ring\` for the clutch`,
  },
  'site-alike': {
    level: 'hint',
    text: ({ site, pair }) => `no nest of ${pair} was called \`${site}\` so far; it is taken for another one`,
    hint: ({ suggestion }) => `did you mean \`site: ${suggestion}\`?`,
  },
  'housing-alike': {
    level: 'hint',
    text: ({ housing, suggestion }) =>
      `no housing was called \`${housing}\` so far, but one is called \`${suggestion}\`; they are taken for two`,
    hint: ({ suggestion }) => `did you mean \`${suggestion}\`?`,
  },
  'fostered-to-itself': {
    level: 'error',
    text: ({ pair }) => `${pair} cannot foster its own clutch`,
    hint: ({ pair }) =>
      `name the other pair: of ${pair}’s own, none is with another pair, in the hand or in an incubator`,
  },
  'unpinned-parent': {
    level: 'hint',
    text: ({ who }) =>
      `\`${who}\` rests on how the clutches are counted, and its clutch is not pinned in its journal`,
    hint: ({ number }) => `write \`clutch: ${number}\` on its first \`laid\``,
  },
  'unknown-task': {
    level: 'hint',
    text: ({ task }) => `there is no task \`${task}\` to skip`,
    hint: ({ suggestion, tasks }) => (suggestion ? `did you mean \`${suggestion}\`?` : `tasks: ${tasks}`),
  },
  'unknown-routine': {
    level: 'hint',
    text: ({ name }) => `no routine of nestlog.yaml is called \`${name}\``,
    hint: ({ suggestion }) =>
      suggestion ? `did you mean \`${suggestion}\`?` : 'routines stand in nestlog.yaml under `routines:`',
  },
} as const satisfies Record<string, FindingKind>;
