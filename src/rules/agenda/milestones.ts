import { type Day, formatDay, shortDay, shortSpan } from '../../days.ts';
import { liveFoodLead, needsLiveFood } from '../../species/live-food.ts';
import { walksOff } from '../../species/walks-off.ts';
import { type Brood, mayHoldChicksUntil, onLiveFood, profilesToHatch } from '../brood.ts';
import { completeClutch, layingBasis } from '../forecast/laying.ts';
import type { Anchor, FindAnchors } from './anchors.ts';
import * as anchors from './anchors.ts';
import type { Condition } from './conditions.ts';
import * as is from './conditions.ts';
import { firstFeed } from './first-feed.ts';
import { BEFORE_HATCH } from './hands-off.ts';
import type { TaskWindow, TaskWords } from './item.ts';
import { latecomers } from './latecomers.ts';
import { onFootTasks } from './on-foot.ts';
import { GIVEN_UP, LOOK_AFTER, SET_BACK } from './state.ts';
import { ringDays, tellAge } from './tell-age.ts';
import { weighEggs } from './weigh-eggs.ts';
import {
  afterAnchor,
  afterWindow,
  basisFor,
  beforeHatch,
  byProfile,
  days,
  FROM_FIRST,
  forecast,
  plus,
  rangeOf,
  SAFE_EARLY,
} from './windows.ts';

/** One kind of task around a clutch, as data: from what it is counted, for how long, and when it is over. */
export interface Milestone extends TaskWords {
  /** `until told` where it is asked until it is done, however seldom the nest is looked into. */
  needsLook: boolean | 'until told';
  anchors: FindAnchors;
  /** What sets one of several anchors apart, whatever is learned of the others meanwhile. */
  each?: (anchor: Anchor) => string | null;
  window: (anchor: Anchor, brood: Brood) => TaskWindow | null;
  done: Condition;
  moot: Condition;
  /** The last day on which it is still shown when nobody did it; null while it is never given up. */
  lapses: (anchor: Anchor, window: TaskWindow, brood: Brood) => Day | null;
}

/** Days for which it is asked whether eggs are sat on, and for which a nest waits to be taken out. */
const WITHIN = { sitting: 2, nestDown: 3 };

/** Days past its window, or past what it is counted from, after which a task is of no use any more. */
const OVER = { nextEgg: 2, inStore: 10, fledging: 14 };

/** Days after ringing on which the legs are looked at, each look asked for until the next, or a little longer. */
const RING_CHECKS = [
  { after: 1, until: 2 },
  { after: 3, until: 5 },
] as const;

/** Every shipped task around a clutch, in the order of a brood's life. */
export const milestones = [
  {
    task: 'next-egg',
    when: 'the last egg + the laying interval, that day',
    doneBy: 'a new `laid`',
    over: `laying is over, they sit on a usual clutch, or the hen is away; ${OVER.nextEgg} d later`,
    say: 'look for the next egg',
    explain:
      'While a clutch is being laid, an egg is due every laying interval, in the early morning. A missed day in the middle of a clutch is a reason to look at the hen: a hen that sits fluffed, strains or stays on the floor is an emergency for an avian vet.',
    needsLook: true,
    anchors: anchors.lastEgg,
    window: (anchor, { profile, clutch, room }) => {
      const interval = rangeOf(profile, 'layingInterval');
      if (interval === null) return null;
      const window = days(interval.low, interval.high)(anchor);
      const complete = clutch === null ? null : completeClutch(clutch, room);
      if (complete === null) return window;
      const last = shortSpan({ from: complete.from, to: complete.to });
      return { ...window, days: `${window.days}; the last about ${last}`, basis: layingBasis(complete) };
    },
    done: is.seenAfter('laid'),
    moot: is.layingOver,
    lapses: afterWindow(OVER.nextEgg),
  },
  {
    task: 'confirm-sitting',
    when: `the day of the first egg that the species sits on … + ${WITHIN.sitting} d`,
    doneBy: '`sitting`',
    over: 'a chick is out, or the hatch window begins',
    say: 'see whether the eggs are sat on',
    explain:
      'All later days are counted from the day on which full sitting, by day and night, began. Write `sitting` when you see it; until then it is inferred from the egg with which the species usually starts; while fewer are told and nobody looks whether more came, it may have begun with the last that would be awaited.',
    needsLook: false,
    anchors: anchors.sittingEgg,
    window: days(0, WITHIN.sitting),
    done: is.sittingSeen,
    moot: is.any(is.hatchedHere, is.eggsEnded, is.noEggHere),
    lapses: beforeHatch(1),
  },
  {
    task: 'candle',
    when: 'sitting + the profile’s candling days; eggs brought later by their own days',
    doneBy: '`candled`',
    over: `a chick is out, or ${BEFORE_HATCH} d before the hatch window`,
    say: 'candle the eggs',
    explain:
      'A lamp behind the egg shows veins in a fertile egg and a clear yolk in one that is not. Counted from the latest day on which sitting can have begun, so that no egg is called clear too early; what looks clear before its day is noted as unsure. Leave a doubtful egg where it is.',
    needsLook: true,
    anchors: anchors.lamp,
    each: latecomers,
    window: byProfile('candling'),
    done: is.any(is.seenSinceDue('candled'), is.allJudged),
    moot: is.any(is.hatchedHere, is.noEggHere),
    lapses: beforeHatch(BEFORE_HATCH + 1),
  },
  {
    task: 'set-back',
    when: `pulled + ${SET_BACK.from} … ${SET_BACK.to} d`,
    doneBy: '`set`',
    over: `an egg has been in store for ${OVER.inStore} d`,
    say: 'set the stored eggs back',
    explain:
      'Eggs taken into store so that a clutch hatches together lose by every day they wait: they go back after four or five days (common practice), turned once or twice a day until then.',
    needsLook: false,
    anchors: anchors.stored,
    window: days(SET_BACK.from, SET_BACK.to),
    done: () => false,
    moot: () => false,
    lapses: afterAnchor(OVER.inStore),
  },
  weighEggs,
  {
    task: 'live-food',
    when: 'hatch window − the profile’s lead … the window’s first day',
    doneBy: '`food` that names live food',
    over: 'the species needs none, the eggs lie in an incubator, no egg may hatch, or the hatch window is past and somebody looked in since; without a look a fortnight past the longest sitting, under `never` once unseen chicks would have left the nest; where it only helps, after its first day',
    say: 'put live food out',
    explain:
      'Chicks of species that rear on live food need it in the first hours. It is on offer before the earliest day on which one can hatch, so that the parents know where it is. Done when the latest `food` names it.',
    needsLook: false,
    anchors: (brood) =>
      anchors.hatchWindow(onLiveFood(brood)).map((anchor) => ({
        ...anchor,
        says: `hatch from ${shortDay(anchor.span.from)} (${anchor.says})`,
      })),
    window: (anchor, brood) => {
      const fed = onLiveFood(brood);
      const lead = Math.max(0, ...profilesToHatch(fed).map(liveFoodLead));
      return {
        ...days(-lead, 0, FROM_FIRST)(anchor),
        days: `− ${lead} d`,
        basis: basisFor(fed.hatch),
      };
    },
    done: is.liveFoodOffered,
    moot: is.any(is.needsNoLiveFood, is.withoutParents, is.noneMayHatch),
    // Where it only helps, nobody is told that it is late; past the window what is left is another question.
    lapses: (_anchor, { to }, brood) => {
      const until = mayHoldChicksUntil(onLiveFood(brood));
      return until !== null && profilesToHatch(brood).some(needsLiveFood) ? until + 1 : to;
    },
  },
  {
    task: 'hatch',
    when: 'the earliest egg’s 10 % day … the last egg’s 90 % day',
    doneBy: 'no egg left that may hatch',
    over: `\`unhatched\` takes over, ${LOOK_AFTER.from} d after the window`,
    say: 'hatching expected',
    explain:
      'From the day by which one in ten of the earliest egg would be out, to the day by which nine in ten of the last would. No looks into the nest in these days. Late is not overdue: nothing is wrong yet when the window has passed.',
    needsLook: false,
    anchors: anchors.hatchWindow,
    window: forecast('hatch'),
    done: is.noneMayHatch,
    moot: is.noEggHere,
    // Eggs that the lamp ruled out are left with the others: what became of all of them is asked at once.
    lapses: (_anchor, { to }, { term }) =>
      to === null ? null : Math.max(to, term?.to ?? to) + LOOK_AFTER.from - 1,
  },
  firstFeed,
  {
    task: 'unhatched',
    when: `no chick: hatch window + ${LOOK_AFTER.from} … ${LOOK_AFTER.to} d; with chicks: when the nest comes down, or they died or went elsewhere`,
    doneBy: 'every egg has a fate',
    over: `${GIVEN_UP} d later`,
    say: 'find out what became of the eggs',
    explain:
      'When no chick came, look two days after the window; where there are chicks, leave the eggs in the nest with them until it comes out. Candle before you decide; an egg is overdue only when fewer than one in a hundred such eggs would still hatch. Nothing here asks you to throw an egg away.',
    needsLook: 'until told',
    anchors: anchors.leftOver,
    // A single day is that on which the nest comes down, or the young were gone; else the look has its own days.
    window: (anchor) =>
      anchor.span.from === anchor.span.to
        ? { ...days(0, WITHIN.nestDown)(anchor), days: '' }
        : { ...days(0, 0, SAFE_EARLY)(anchor), days: plus(LOOK_AFTER.from, LOOK_AFTER.to) },
    done: is.noEggHere,
    moot: () => false,
    lapses: afterWindow(GIVEN_UP),
  },
  tellAge,
  {
    task: 'ring',
    when: 'each day of hatching + the profile’s ring age, from a day before',
    doneBy: '`ringed`',
    over: 'fledged, or after the window: then it is too late for a closed ring',
    say: 'check whether the rings fit',
    explain:
      'Ring when the closed ring just stays on over the toes: from a day before the usual age, look rather than count. Never force a ring over the foot; when it no longer goes on, it is too late. Size and duty to ring are your ring issuer’s and your country’s matter.',
    needsLook: true,
    anchors: anchors.unringed,
    each: ({ span }) => formatDay(span.to),
    window: ringDays,
    done: () => false,
    moot: is.noRinging,
    lapses: afterWindow(0),
  },
  ...RING_CHECKS.map(
    ({ after, until }): Milestone => ({
      task: 'ring-check',
      when: `ringed + ${RING_CHECKS[0].after} d, and + ${RING_CHECKS[1].after} d`,
      doneBy: '`crops`, `weighed`, `checked` or `ringed`',
      over: `fledged, or ${RING_CHECKS[1].until} d after ringing`,
      say: 'look at the ringed legs',
      explain:
        'The morning after ringing and on the third day: is every ring still on, no leg swollen, no chick thrown out of the nest? A tight ring on a swollen leg is a vet’s job; taking it off at home can break the leg.',
      needsLook: false,
      anchors: anchors.ringing,
      each: ({ span }) => `${formatDay(span.to)}+${after}`,
      window: days(after, after),
      done: is.seenSinceDue('crops', 'weighed', 'checked', 'ringed'),
      moot: is.allFledged,
      lapses: afterAnchor(until),
    }),
  ),
  ...onFootTasks,
  {
    task: 'warm-nights',
    when: 'last hatching + the profile’s brooding days',
    doneBy: 'nothing: it is for knowing',
    over: 'no chick is in the nest, or after the window',
    say: 'keep the nights warm: brooding stops',
    explain:
      'About now the hen stops brooding by night while the chicks are still thinly feathered. A cold night in these days costs broods: no draughts, warmth where it is usual, no change of place.',
    needsLook: false,
    anchors: anchors.brooded,
    window: byProfile('brooding', SAFE_EARLY),
    done: () => false,
    moot: is.any(is.withoutParents, is.noYoung, is.allFledged, is.onFoot),
    lapses: afterWindow(0),
  },
  {
    task: 'fledge',
    when: 'the eldest’s 10 % day … the youngest’s 90 % day',
    doneBy: 'all fledged',
    over: `no chick is alive; ${OVER.fledging} d after the window`,
    say: 'fledging expected',
    explain:
      'No looks into the nest in the week before: young disturbed then leave it too early. Once they are out, see at dusk that every one is off the floor and warm, and that somebody feeds it.',
    needsLook: false,
    anchors: anchors.fledgeWindow,
    window: forecast('fledge'),
    done: is.allFledged,
    moot: is.noYoung,
    lapses: afterWindow(OVER.fledging),
  },
  {
    task: 'nest-down',
    when: `the morning after the third night in a row with all young out … + ${WITHIN.nestDown} d; without three such looks, once the nights of roosting back are over`,
    doneBy: '`nest: removed` or `nest: cleaned`',
    over: `anything is in that nest, they build in it again, or the next clutch is laid; ${GIVEN_UP} d later`,
    say: 'take the nest out or clean it',
    explain:
      'When for three nights in a row no fledgling slept in it, the old nest can come out. Where nobody looked on three nights it is asked about once the nights are over in which young of the species come back, or three nights after the last on which one of them was seen in it. Before a second clutch, never with eggs or young in it.',
    needsLook: false,
    anchors: anchors.nestEmpty,
    window: days(0, WITHIN.nestDown),
    done: is.nestTakenOut,
    moot: is.any(is.withoutParents, is.onFoot, is.nestInUse, is.laidAgainHere, is.builtAgainHere),
    lapses: afterAnchor(GIVEN_UP),
  },
  {
    task: 'watch-restart',
    when: 'first fledging + the profile’s restart days, with no end',
    doneBy: '`parted`, or the next clutch is laid',
    over: `no young depend any more, they or one of the two live elsewhere, or one is dead or gone; ${GIVEN_UP} d after the last of them must feed itself`,
    say: 'watch whether a parent drives',
    explain:
      'A parent that wants the next nest may drive its mate or pluck and chase the last young. Stay near from now on; part the pair only once you saw who feeds the young.',
    needsLook: false,
    anchors: (brood) => {
      // Who walks off at once leaves no nest: the days count from the hatching.
      const first = (walksOff(brood.profile) ? anchors.firstHatching : anchors.firstFledging)(brood);
      const early = (rangeOf(brood.pair.profile, 'restart')?.low ?? 0) < 0;
      return first.length > 0 || !early ? first : anchors.fledgeWindow(brood);
    },
    // It is the parents that begin anew, whosever young they rear.
    window: (anchor, { pair }) => {
      const restart = rangeOf(pair.profile, 'restart');
      return restart === null ? null : days(restart.low, null, FROM_FIRST)(anchor);
    },
    done: is.any(is.parted, is.laidAgain),
    moot: is.any(is.withoutParents, is.noYoung, is.allAway, is.alone),
    // Long after they must have fed themselves they are asked about as unaccounted for.
    lapses: (_anchor, _window, brood) => {
      const ends = anchors.dependents(brood).map(({ span, profile }) => {
        const age = rangeOf(profile ?? brood.profile, 'independence');
        return age === null ? Number.POSITIVE_INFINITY : span.to + age.high + GIVEN_UP;
      });
      return ends.length === 0 ? null : Math.max(...ends);
    },
  },
  {
    task: 'independent',
    when: 'the eldest + the profile’s lowest … the youngest + its highest age of independence',
    doneBy: '`independent`',
    over: `${GIVEN_UP} d later`,
    say: 'see whether the young feed themselves',
    explain:
      'Independent is a young bird that cracks seed and has not begged for a week. Counted to the last day of the profile for the youngest: do not part young from their parents before.',
    needsLook: false,
    anchors: anchors.dependents,
    window: byProfile('independence', SAFE_EARLY),
    done: is.noYoung,
    moot: is.noYoung,
    lapses: afterWindow(GIVEN_UP),
  },
] as const satisfies readonly Milestone[];
